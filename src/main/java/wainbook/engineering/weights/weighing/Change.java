package wainbook.engineering.weights.weighing;

/**
 * A mass that goes in or, below nought, comes out, with how well it is known.
 *
 * @param leverM behind the front group’s centre
 * @param massUKg standard uncertainty of the mass; {@code leverUM} of its place
 */
public record Change(String name, double massKg, double leverM, double massUKg, double leverUM) {}
