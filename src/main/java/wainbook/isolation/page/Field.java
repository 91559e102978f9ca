package wainbook.isolation.page;

import java.util.List;
import java.util.Optional;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * One field of a step's form, made from a component of what the step asks for.
 *
 * @param options what can be chosen, best first
 * @param preset what stands there before anything is typed
 * @param example what a form filled in well might hold, to ask the rules before drawing
 */
public record Field(
        String name, Sort sort, List<Option> options, String preset, List<String> example, Optional<String> unit) {

    /** How it is asked. */
    public enum Sort {
        HIDDEN,
        SELECT,
        CHECKS,
        ONE_OF,
        TICK,
        YES_OR_NO,
        DECIMAL,
        TEXT,
        TIME
    }

    public Field {
        options = List.copyOf(options);
        example = List.copyOf(example);
    }

    static Field hidden(String name, String preset) {
        return new Field(name, Sort.HIDDEN, List.of(), preset, List.of(preset), Optional.empty());
    }

    static Field select(String name, List<Option> options, String preset) {
        String first = options.stream().findFirst().map(Option::value).orElse("–");
        return new Field(
                name, Sort.SELECT, options, preset, List.of(preset.isEmpty() ? first : preset), Optional.empty());
    }

    static Field checks(String name, List<Option> options) {
        return new Field(
                name,
                Sort.CHECKS,
                options,
                "",
                options.stream().map(Option::value).toList(),
                Optional.empty());
    }

    static Field oneOf(String name, List<Option> options, String preset) {
        String first = options.stream().findFirst().map(Option::value).orElse("");
        return new Field(
                name, Sort.ONE_OF, options, preset, List.of(preset.isEmpty() ? first : preset), Optional.empty());
    }

    static Field tick(String name) {
        return new Field(name, Sort.TICK, List.of(), "", List.of("true"), Optional.empty());
    }

    static Field yesOrNo(String name, String preset) {
        List<Option> options = List.of(
                new Option("true", Words.of("isolating.yes." + name)),
                new Option("false", Words.of("isolating.no." + name)));
        return new Field(name, Sort.YES_OR_NO, options, preset, List.of("true"), Optional.empty());
    }

    static Field volts(String name, String example) {
        return new Field(name, Sort.DECIMAL, List.of(), "", List.of(example), Optional.of("V"));
    }

    static Field text(String name, String preset) {
        return new Field(name, Sort.TEXT, List.of(), preset, List.of("–"), Optional.empty());
    }

    static Field time(String name, String preset) {
        return new Field(name, Sort.TIME, List.of(), preset, List.of(preset), Optional.empty());
    }

    public String kind() {
        return sort.name();
    }

    public String label() {
        return Words.find("isolating.field." + name).orElseGet(() -> Words.of("isolating.pair." + pair()));
    }

    private String pair() {
        return name.replaceFirst("^volt-", "");
    }
}
