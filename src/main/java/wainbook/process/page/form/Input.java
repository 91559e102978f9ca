package wainbook.process.page.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * One field of the form by which a part is written.
 *
 * @param said its label is the text {@code process.field.<said>}, its hint {@code process.hint.<said>}
 * @param unit as printed beside what is typed; empty where there is none
 */
public record Input(String name, String said, Sort sort, List<Option> options, String unit) {

    /** How it is typed. */
    public enum Sort {
        LINE,
        WHOLE,
        DECIMAL,
        AREA,
        CHOICE,
        TICK
    }

    public Input {
        options = List.copyOf(options);
    }

    private Input(String name, Sort sort, List<Option> options) {
        this(name, name, sort, options, "");
    }

    /** The same with the words of another field. */
    Input as(String other) {
        return new Input(name, other, sort, options, unit);
    }

    Input in(String printed) {
        return new Input(name, said, sort, options, printed);
    }

    static Input line(String name) {
        return new Input(name, Sort.LINE, List.of());
    }

    static Input whole(String name) {
        return new Input(name, Sort.WHOLE, List.of());
    }

    static Input decimal(String name) {
        return new Input(name, Sort.DECIMAL, List.of());
    }

    static Input area(String name) {
        return new Input(name, Sort.AREA, List.of());
    }

    static Input tick(String name) {
        return new Input(name, Sort.TICK, List.of());
    }

    static Input choice(String name, List<Option> options) {
        return new Input(name, Sort.CHOICE, options);
    }

    /** A choice that may be left empty. */
    static Input choiceOrNone(String name, List<Option> options) {
        var all = new ArrayList<Option>();
        all.add(new Option("", Words.of("process.none")));
        all.addAll(options);
        return new Input(name, Sort.CHOICE, all);
    }

    static <E extends Enum<E>> List<Option> words(Class<E> type, String prefix) {
        return Arrays.stream(type.getEnumConstants())
                .map(one -> new Option(one.name(), Words.of(prefix + one.name())))
                .toList();
    }

    static List<Option> codes(List<String> codes) {
        return codes.stream().map(code -> new Option(code, code)).toList();
    }

    public String label() {
        return Words.of("process.field." + said);
    }

    public Optional<String> hint() {
        return Words.find("process.hint." + said);
    }

    /** Whether one of the options stands for nothing chosen. */
    public boolean blank() {
        return options.stream().anyMatch(option -> option.value().isEmpty());
    }
}
