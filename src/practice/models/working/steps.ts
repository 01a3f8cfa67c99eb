/** Steps put into an order: the model of every family that asks nothing but that. */
export { stepsModel as steps } from '../parts/steps.ts';
