package wainbook.works;

/** A customer who runs vehicles. */
public record Operator(String code, String title) {}
