package wainbook.order.specification.page;

import java.util.List;
import java.util.stream.IntStream;
import wainbook.order.specification.Bounds;
import wainbook.page.Filled;

/** The parts of a day, as fields of the form. */
public record LegFields(Filled duty) {

    public List<Integer> numbers() {
        return IntStream.rangeClosed(1, DutyForm.LEGS).boxed().toList();
    }

    public List<String> fields() {
        return DutyForm.LEG_FIELDS;
    }

    public String value(int leg, String field) {
        return duty.value("leg" + leg + field);
    }

    public String label(int leg, String field) {
        return Bounds.label("leg" + leg + field);
    }

    public boolean wrong(int leg, String field) {
        return duty.form().fault("leg" + leg + field).isPresent();
    }
}
