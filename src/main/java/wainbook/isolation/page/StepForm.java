package wainbook.isolation.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.isolation.Step;
import wainbook.isolation.step.TakeStep;
import wainbook.isolation.step.Wanted;
import wainbook.page.Form;
import wainbook.page.Words;

/**
 * A step as its form shows it.
 *
 * @param against what stands against this person's taking it, however well the form is filled in
 * @param form what was typed, where it was sent and came back
 * @param about what the step is about now: the source, the point, the check
 */
public record StepForm(
        String order,
        Step step,
        List<Field> fields,
        List<Reason> against,
        Form form,
        UUID id,
        long seen,
        Optional<String> about) {

    public String path() {
        return "/isolation/" + order + "/" + Wanted.word(step);
    }

    public String title() {
        return Words.of("isolation.step." + step.name());
    }

    /** Whether it was sent and came back, and so must be seen. */
    public boolean cameBack() {
        return !form.equals(Form.EMPTY);
    }

    public boolean signed() {
        return TakeStep.SIGNED.contains(step);
    }

    public boolean safeMaking() {
        return step == Step.STOP || step == Step.REPORT_DANGER;
    }

    /** Told apart where several forms stand on a page; the one with faults has the names that its faults lead to. */
    public String fieldId(Field field) {
        return form.right() ? Wanted.word(step) + "-" + field.name() : field.name();
    }

    public String passwordId() {
        return form.right() ? Wanted.word(step) + "-password" : "password";
    }

    public boolean ticked(Field field, String choice) {
        String typed = form.value(field.name());
        return typed.isEmpty()
                ? field.preset().equals(choice)
                : List.of(typed.split("\n")).contains(choice);
    }

    public String value(Field field) {
        return form.typed().containsKey(field.name()) ? form.value(field.name()) : field.preset();
    }

    public Optional<String> fault(Field field) {
        return form.fault(field.name());
    }

    /** A form filled in well, for asking the rules before it is drawn. */
    static Map<String, List<String>> example(List<Field> fields) {
        var filled = new HashMap<String, List<String>>();
        fields.forEach(field -> filled.put(field.name(), field.example()));
        return filled;
    }
}
