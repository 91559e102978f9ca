package wainbook.engineering.weights;

/** The greatest payload and what binds it. */
public record PayloadLimit(double kg, Binding binding) {}
