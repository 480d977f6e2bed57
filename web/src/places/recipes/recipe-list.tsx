import type { Belt, Plant, Recipe } from '@loopwright/plant';
import { voiceOfDisplay } from '@loopwright/sheets';
import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { newAddress } from '../stores/store-address.ts';
import { recipeAddress, trialAddress } from './recipes-address.ts';

/** All recipes, belt by belt; a belt without one leads to looking for it. */
export function RecipeList({ plant }: { readonly plant: Plant }) {
  const { say } = useSpeech();
  const belts = Object.values(plant.belts);
  return (
    <>
      <h1 tabIndex={-1}>{say('app.recipes')}</h1>
      <p className="soft">{say('recipes.about')}</p>
      {Object.keys(plant.recipes).length === 0 ? (
        <div className="said">
          <p>{say('stores.empty.recipes')}</p>
        </div>
      ) : null}
      {belts.map((belt) => (
        <BeltRecipes key={belt.id} plant={plant} belt={belt} />
      ))}
      <p className="recipes-new">
        <Link href={newAddress(belts.length === 0 ? 'belts' : 'recipes')} className="button">
          {say(belts.length === 0 ? 'stores.new.belts' : 'stores.new.recipes')}
        </Link>
      </p>
    </>
  );
}

function BeltRecipes({ plant, belt }: { readonly plant: Plant; readonly belt: Belt }) {
  const { say } = useSpeech();
  const recipes = Object.values(plant.recipes).filter((recipe) => recipe.belt === belt.id);
  const canTry = Object.keys(plant.recipes).length > 0;
  return (
    <section className="part" aria-labelledby={`belt-${belt.id}`}>
      <h2 id={`belt-${belt.id}`}>
        <bdi>{belt.id}</bdi>
      </h2>
      {recipes.length === 0 ? <p>{say('recipes.none-for-belt')}</p> : null}
      <ul className="recipe-rows">
        {recipes.map((recipe) => (
          <li key={recipe.id}>
            <RecipeRow plant={plant} recipe={recipe} />
          </li>
        ))}
      </ul>
      {recipes.length === 0 && canTry ? (
        <Link href={trialAddress('belt', belt.id)} className="button recipe-try">
          {say('recipes.look-for')}
        </Link>
      ) : null}
    </section>
  );
}

function RecipeRow({ plant, recipe }: { readonly plant: Plant; readonly recipe: Recipe }) {
  const speech = useSpeech();
  const { say, write } = speech;
  const press = recipe.press === undefined ? undefined : plant.presses[recipe.press];
  const display = voiceOfDisplay(press, speech);
  return (
    <Link href={recipeAddress(recipe.id)} className="recipe-row">
      <span className="strong">
        <bdi>{recipe.id}</bdi>
      </span>
      <span>
        {press === undefined ? say('recipes.any-press') : `${press.id} ${press.name}`} ·{' '}
        {say('recipes.revision', { revision: recipe.revision })}
      </span>
      <span className="soft">
        {say('recipes.settings', {
          top: display.write(recipe.top_degC, 'temperature'),
          bottom: display.write(recipe.bottom_degC, 'temperature'),
          dwell: write(recipe.dwell_s, 'time', { digits: 0 }),
          pressure: write(recipe.beltPressure_Pa, 'pressure'),
        })}
        {recipe.source === 'example' ? ` · ${say('source.example')}` : ''}
      </span>
    </Link>
  );
}
