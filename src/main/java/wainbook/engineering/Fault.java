package wainbook.engineering;

/** What is wrong with one field. */
public record Fault(String field, Sentence message) {

    public static Fault of(String field, String key, Object... arguments) {
        return new Fault(field, Sentence.of("engineering.fault." + key, arguments));
    }
}
