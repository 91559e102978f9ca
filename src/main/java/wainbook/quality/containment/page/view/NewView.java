package wainbook.quality.containment.page.view;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.containment.Opening.Sketch;

/**
 * The form that opens a containment.
 *
 * @param sketch what it would touch; empty until enough is known
 */
public record NewView(Filled filled, Sort sort, Optional<Sketch> sketch) {

    public static final List<String> FIELDS =
            List.of("sort", "code", "part", "revision", "item", "competence", "from", "to", "reason", "holdsAll");

    /** What is sent on when it is opened as previewed. */
    public List<String> fields() {
        return FIELDS;
    }

    public List<Option> sorts() {
        return Arrays.stream(Sort.values())
                .map(one -> new Option(one.name(), Words.of("quality.sort." + one.name())))
                .toList();
    }

    public String codeLabel() {
        return Words.of("quality.codeLabel." + sort.name());
    }

    public boolean is(String name) {
        return sort.name().equals(name);
    }

    /** Whether the window that the form states matters. */
    public boolean timed() {
        return sort == Sort.INSTRUMENT || sort == Sort.COMPETENCE;
    }

    public int vehicles() {
        return sketch.map(known -> known.touched().size()).orElse(0);
    }

    public int entries() {
        return sketch.map(Sketch::entries).orElse(0);
    }

    public boolean touches() {
        return vehicles() > 0;
    }
}
