package wainbook.page.calculation;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wainbook.engineering.Fault;
import wainbook.page.Form;
import wainbook.page.Words;

/** Faults of a calculation's inputs, said at the fields of its form. */
final class TypedFaults {

    private static final Pattern ELEMENT = Pattern.compile("([^.\\[]+)\\[(\\d+)](.*)");

    private TypedFaults() {}

    static Form at(String calculation, Form form, List<Fault> faults) {
        Form faulty = form;
        for (Fault fault : faults) {
            faulty = at(calculation, faulty, fault);
        }
        return faulty;
    }

    private static Form at(String calculation, Form form, Fault fault) {
        String said = said(fault);
        Matcher element = ELEMENT.matcher(fault.field());
        if (element.matches()) {
            int place = Integer.parseInt(element.group(2)) + 1;
            return form.wrong(
                    element.group(1),
                    "engineering.elementFault",
                    Asked.label(calculation, element.group(1)),
                    place + element.group(3),
                    said);
        }
        String field = fault.field().split("\\.", 2)[0];
        return fault.message().key().equals("engineering.fault.unknown")
                ? form.wrong(field, "engineering.unknownField", field)
                : form.wrong(field, "engineering.fieldFault", Asked.label(calculation, field), said);
    }

    /** People type no quotation marks; where a message to scripts speaks of JSON, there is another for them. */
    private static String said(Fault fault) {
        String forPeople = fault.message().key() + ".typed";
        return Words.find(forPeople).isPresent()
                ? Words.of(forPeople, fault.message().arguments().toArray())
                : Written.text(fault.message());
    }
}
