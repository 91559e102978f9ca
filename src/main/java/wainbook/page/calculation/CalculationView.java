package wainbook.page.calculation;

import java.util.List;
import java.util.Optional;
import wainbook.page.Form;

/**
 * The page of one calculation.
 *
 * @param worked what it came to; absent before it was asked, and where it could not be worked
 * @param refused why these readings cannot be true together
 */
public record CalculationView(Described described, Form form, Optional<Worked> worked, Optional<Impossible> refused) {

    /** What a calculation is, before any figure. */
    public record Described(
            String name,
            String group,
            String title,
            Optional<String> purpose,
            List<Asked> asked,
            List<Cited> sources,
            List<String> cautions) {}

    /** What cannot be, and what to look at before trying again. */
    public record Impossible(String what, String check) {}

    /** Those of the result, where there is one: a figure can call for more. */
    public List<String> cautions() {
        return worked.map(Worked::cautions).orElse(described.cautions());
    }

    static CalculationView of(Described described, Form form) {
        return new CalculationView(described, form, Optional.empty(), Optional.empty());
    }

    CalculationView with(Worked working) {
        return new CalculationView(described, form, Optional.of(working), Optional.empty());
    }

    CalculationView with(Impossible impossible) {
        return new CalculationView(described, form, Optional.empty(), Optional.of(impossible));
    }

    /** Faults at fields and impossible readings are both something to correct. */
    int status() {
        return form.right() && refused.isEmpty() ? 200 : 422;
    }
}
