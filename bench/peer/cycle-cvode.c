/* The press cycle of bench/cycle.mjs on the same cells, marched by SUNDIALS CVODE: BDF, banded analytic Jacobian, stopped
 * and begun anew where the heaters are switched off. Reads a description on stdin and prints one line a tolerance:
 * tolerance, microseconds of processor time a cycle, steps, ready, open, Z and J of the middle, and the middle's
 * temperature at every time asked for. With a map it runs all its cycles and prints their processor time alone. */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

#define MOST 256
#define MOST_TIMES 1024

typedef struct {
  int cells, belt_from, belt_to, middle, general;
  int side; /* unknowns before the plate: sensor, and the controller's integral where it has one */
  int count;
  double conductance[MOST], capacity[MOST]; /* conductance[i]: between plate/cell i and i + 1; capacity of cells */
  double mass[MOST], slope[MOST], cap[MOST], c20[MOST], melt[MOST], melt_centre, melt_width;
  double plate_capacity, plate_slope, loss, fan, ambient, lag, band, integral_s, tracking_s;
  double set[2], ready, dwell, open, volts, lead, heater_S, area, pressure;
  int cooling;
} Press;

static double rates[3][8001]; /* 0.05 K apart from 0 degC */

static void tabulate(void) {
  const double R = 8.314462618;
  for (int i = 0; i <= 8000; i++) {
    double T = 0.05 * i, K = T + 273.15, gate = 1 / (1 + exp((165 - T) / 7));
    rates[0][i] = gate / (20 * exp(100e3 / R * (1 / K - 1 / 453.15)));
    rates[1][i] = gate / (5000 * exp(100e3 / R * (1 / K - 1 / 463.15)));
    rates[2][i] = 4.24e-4 * exp(-150e3 / R * (1 / K - 1 / 483.15));
  }
}

static double cell_capacity(const Press *p, int i, double T) {
  if (!p->general) return p->capacity[i];
  double c = p->c20[i] + p->slope[i] * (T - 20);
  if (p->cap[i] > 0 && c > p->cap[i]) c = p->cap[i];
  if (p->melt[i] > 0) {
    double turns = (T - p->melt_centre) / p->melt_width;
    if (fabs(turns) < 0.5) c += p->melt[i] / p->melt_width * (1 + cos(2 * M_PI * turns));
  }
  return p->mass[i] * c;
}

static double plate_capacity(const Press *p, double T) { return p->plate_capacity * (1 + p->plate_slope * (T - 25)); }

static double clamp(double u) { return u < 0 ? 0 : u > 1 ? 1 : u; }

static int right_side(sunrealtype t, N_Vector yv, N_Vector dv, void *data) {
  (void)t;
  const Press *p = data;
  const double *y = N_VGetArrayPointer(yv);
  double *d = N_VGetArrayPointer(dv);
  int n = p->cells, top = p->side, bottom = top + 1 + n;
  int sensor[2] = {top - 1, bottom + 1}, integral[2] = {top - 2, bottom + 2}, plate[2] = {top, bottom};
  double u[2] = {0, 0}, raw[2];
  for (int e = 0; e < 2; e++) {
    raw[e] = (p->set[e] - y[sensor[e]]) / p->band + (p->integral_s > 0 ? y[integral[e]] : 0);
    if (!p->cooling) u[e] = clamp(raw[e]);
  }
  double volts = p->volts / (1 + p->lead * p->heater_S * (u[0] + u[1]));
  double inflow = 0;
  for (int i = 0; i <= n + 1; i++) {
    double outflow = i <= n ? p->conductance[i] * (y[top + i] - y[top + i + 1]) : 0;
    d[top + i] = inflow - outflow;
    if (i >= 1 && i <= n) d[top + i] /= cell_capacity(p, i, y[top + i]);
    inflow = outflow;
  }
  for (int e = 0; e < 2; e++) {
    double T = y[plate[e]], heat = u[e] * p->heater_S * volts * volts / p->area;
    double loss = (p->loss + (p->cooling ? p->fan : 0)) * (T - p->ambient);
    d[plate[e]] = (d[plate[e]] + heat - loss) / plate_capacity(p, T);
    d[sensor[e]] = (T - y[sensor[e]]) / p->lag;
    if (p->integral_s > 0) d[integral[e]] = 0;
    if (p->integral_s > 0 && !p->cooling) {
      d[integral[e]] = (p->set[e] - y[sensor[e]]) / (p->band * p->integral_s) + (u[e] - raw[e]) / p->tracking_s;
    }
  }
  return 0;
}

static int jacobian(sunrealtype t, N_Vector yv, N_Vector fy, SUNMatrix J, void *data, N_Vector a, N_Vector b, N_Vector c) {
  (void)t, (void)fy, (void)a, (void)b, (void)c;
  const Press *p = data;
  const double *y = N_VGetArrayPointer(yv);
  int n = p->cells, top = p->side, bottom = top + 1 + n;
  int sensor[2] = {top - 1, bottom + 1}, integral[2] = {top - 2, bottom + 2}, plate[2] = {top, bottom};
  for (int i = 0; i <= n + 1; i++) {
    double above = i > 0 ? p->conductance[i - 1] : 0, below = i <= n ? p->conductance[i] : 0, own = above + below;
    double C = i == 0 || i == n + 1 ? plate_capacity(p, y[top + i]) : cell_capacity(p, i, y[top + i]);
    if (i == 0 || i == n + 1) own += p->loss + (p->cooling ? p->fan : 0);
    SM_ELEMENT_B(J, top + i, top + i) = -own / C;
    if (i > 0) SM_ELEMENT_B(J, top + i, top + i - 1) = above / C;
    if (i <= n) SM_ELEMENT_B(J, top + i, top + i + 1) = below / C;
  }
  for (int e = 0; e < 2; e++) {
    double raw = (p->set[e] - y[sensor[e]]) / p->band + (p->integral_s > 0 ? y[integral[e]] : 0);
    int follows = !p->cooling && raw > 0 && raw < 1;
    double power = p->heater_S * p->volts * p->volts / p->area / plate_capacity(p, y[plate[e]]);
    SM_ELEMENT_B(J, sensor[e], plate[e]) = 1 / p->lag;
    SM_ELEMENT_B(J, sensor[e], sensor[e]) = -1 / p->lag;
    if (follows) SM_ELEMENT_B(J, plate[e], sensor[e]) = -power / p->band;
    if (p->integral_s > 0 && !p->cooling) {
      double tracking = follows ? 0 : 1 / p->tracking_s;
      if (follows) SM_ELEMENT_B(J, plate[e], integral[e]) = power;
      SM_ELEMENT_B(J, integral[e], sensor[e]) = -1 / (p->band * p->integral_s) + tracking / p->band;
      SM_ELEMENT_B(J, integral[e], integral[e]) = -tracking;
    }
  }
  return 0;
}

static int goal(sunrealtype t, N_Vector yv, sunrealtype *g, void *data) {
  (void)t;
  const Press *p = data;
  const double *y = N_VGetArrayPointer(yv);
  double top = y[p->side - 1], bottom = y[p->side + 2 + p->cells];
  g[0] = p->cooling ? fmax(top, bottom) - p->open : fmin(top - p->set[0], bottom - p->set[1]) + p->ready;
  return 0;
}

typedef struct {
  long steps;
  double ready, open, Z, J;
} Answer;

static void add(double T, double weight, double *sum) {
  double at = T * 20;
  if (!(at > 0 && at < 7999)) return;
  int i = (int)at;
  double share = at - i;
  for (int r = 0; r < 3; r++) sum[r] += weight * (rates[r][i] + share * (rates[r][i + 1] - rates[r][i]));
}

/* Made once and used for every cycle. */
typedef struct {
  void *cvode;
  N_Vector y, middle;
  SUNMatrix matrix;
  SUNLinearSolver solver;
} March;

static March make(Press *p, double tolerance, SUNContext context) {
  March m;
  m.y = N_VNew_Serial(p->count, context);
  m.middle = N_VNew_Serial(p->count, context);
  N_VConst(0, m.y);
  m.cvode = CVodeCreate(CV_BDF, context);
  CVodeInit(m.cvode, right_side, 0, m.y);
  CVodeSStolerances(m.cvode, 0, tolerance);
  CVodeSetUserData(m.cvode, p);
  CVodeRootInit(m.cvode, 1, goal);
  m.matrix = SUNBandMatrix(p->count, p->side, p->side, context);
  m.solver = SUNLinSol_Band(m.y, m.matrix, context);
  CVodeSetLinearSolver(m.cvode, m.solver, m.matrix);
  CVodeSetJacFn(m.cvode, jacobian);
  CVodeSetMaxNumSteps(m.cvode, 100000);
  return m;
}

static void discard(March *m) {
  CVodeFree(&m->cvode);
  SUNLinSolFree(m->solver);
  SUNMatDestroy(m->matrix);
  N_VDestroy(m->y);
  N_VDestroy(m->middle);
}

static double times[MOST_TIMES], seen[MOST_TIMES];
static int wanted;

static Answer run(Press *p, March *march) {
  int top = p->side, next = 0;
  int from = p->general ? p->belt_from : p->middle, to = p->general ? p->belt_to : p->middle + 1;
  double *v = N_VGetArrayPointer(march->y), *m = N_VGetArrayPointer(march->middle), before[MOST];
  double sums[MOST][3] = {{0}};
  void *cv = march->cvode;
  for (int i = 0; i < p->count; i++) v[i] = p->ambient;
  if (p->side == 2) v[0] = v[p->count - 1] = 0;
  p->cooling = 0;
  CVodeReInit(cv, 0, march->y);
  Answer out = {0, 0, 0, 0, 0};
  double t = 0, last = 0, end = -1;
  for (;;) {
    for (int i = from; i < to; i++) before[i] = v[top + i];
    if (end > 0 && !p->cooling) CVodeSetStopTime(cv, end);
    int flag = CVode(cv, 1e5, march->y, &t, CV_ONE_STEP);
    if (flag < 0) exit(3);
    double step = t - last;
    if (step > 0) {
      CVodeGetDky(cv, last + 0.5 * step, 0, march->middle);
      for (int i = from; i < to; i++) {
        add(before[i], step / 6, sums[i]);
        add(m[top + i], 4 * step / 6, sums[i]);
        add(v[top + i], step / 6, sums[i]);
      }
    }
    for (; next < wanted && times[next] <= t; next++) {
      CVodeGetDky(cv, times[next], 0, march->middle);
      seen[next] = m[top + p->middle];
    }
    last = t;
    if (flag == CV_ROOT_RETURN && p->cooling) break;
    if (flag == CV_ROOT_RETURN && end < 0) {
      out.ready = t;
      end = t + p->dwell;
    }
    if (flag == CV_TSTOP_RETURN || (end > 0 && !p->cooling && t >= end)) {
      long so_far;
      CVodeGetNumSteps(cv, &so_far);
      out.steps += so_far;
      p->cooling = 1;
      CVodeReInit(cv, t, march->y);
    }
  }
  long rest;
  CVodeGetNumSteps(cv, &rest);
  out.steps += rest;
  out.open = t;
  out.Z = sums[p->middle][0];
  out.J = p->pressure * sums[p->middle][1];
  return out;
}

static double number(void) {
  double x;
  if (scanf("%lf", &x) != 1) exit(4);
  return x;
}

int main(void) {
  static Press p;
  p.general = (int)number(), p.cells = (int)number();
  p.belt_from = (int)number(), p.belt_to = (int)number(), p.middle = (int)number();
  for (int i = 0; i <= p.cells; i++) p.conductance[i] = number();
  for (int i = 1; i <= p.cells; i++) {
    p.mass[i] = number(), p.c20[i] = number(), p.slope[i] = number(), p.cap[i] = number(), p.melt[i] = number();
    p.capacity[i] = p.mass[i] * p.c20[i];
  }
  p.melt_centre = number(), p.melt_width = number();
  p.plate_capacity = number(), p.plate_slope = number(), p.loss = number(), p.fan = number(), p.ambient = number();
  p.lag = number(), p.band = number(), p.integral_s = number(), p.tracking_s = number();
  p.set[0] = number(), p.set[1] = number(), p.ready = number(), p.dwell = number(), p.open = number();
  p.volts = number(), p.lead = number(), p.heater_S = number(), p.area = number(), p.pressure = number();
  p.side = p.general ? 2 : 1;
  p.count = p.cells + 2 + 2 * p.side;
  int repeats = (int)number(), tolerances = (int)number();
  double tolerance[16];
  for (int k = 0; k < tolerances; k++) tolerance[k] = number();
  int all = (int)number();
  for (int i = 0; i < all; i++) times[i] = number();
  int shifts = (int)number(), dwells = (int)number(), pressures = (int)number();
  SUNContext context;
  SUNContext_Create(NULL, &context);
  tabulate();
  double set[2] = {p.set[0], p.set[1]};
  for (int k = 0; k < tolerances; k++) {
    March march = make(&p, tolerance[k], context);
    if (shifts > 0) {
      double checked = 0;
      clock_t start = clock();
      for (int i = 0; i < shifts; i++)
        for (int j = 0; j < dwells; j++)
          for (int h = 0; h < pressures; h++) {
            for (int e = 0; e < 2; e++) p.set[e] = set[e] - 20 + i * 40.0 / (shifts - 1);
            p.dwell = 20 + j * 560.0 / (dwells - 1);
            checked += run(&p, &march).open;
          }
      printf("%g %.3f %.3f\n", tolerance[k], 1e6 * (clock() - start) / CLOCKS_PER_SEC, checked);
    } else {
      wanted = all;
      Answer a = run(&p, &march);
      wanted = 0;
      clock_t start = clock();
      for (int i = 0; i < repeats; i++) run(&p, &march);
      double us = repeats > 0 ? 1e6 * (clock() - start) / CLOCKS_PER_SEC / repeats : 0;
      printf("%g %.3f %ld %.5f %.5f %.7g %.7g", tolerance[k], us, a.steps, a.ready, a.open, a.Z, a.J);
      for (int i = 0; i < all; i++) printf(" %.5f", seen[i]);
      printf("\n");
    }
    discard(&march);
  }
  SUNContext_Free(&context);
  return 0;
}
