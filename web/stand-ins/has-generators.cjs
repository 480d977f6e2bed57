// A numbers library of the engine asks whether this browser has generators by evaluating a line of code, which the
// content-security policy forbids. Every browser that can run this page has them.
module.exports = () => true;
