/** Fields of a form: a line to write on, what is usual beside it. */
export { ChoiceField } from "./choice-field.tsx";
export { QuantityField } from "./quantity-field.tsx";
export { WrittenField } from "./written-field.tsx";
