/**
 * The drill deck: short service calls, mixed and spaced. Which cards come in which order, what each is about, when help
 * folds away, and what counts as mastered. Pure functions of seeds and of what a learner did before.
 */
package provingyard.drill;
