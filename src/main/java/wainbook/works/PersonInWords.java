package wainbook.works;

import io.quarkus.qute.TemplateExtension;

/** Lets a template write {@code {person:name(number)}}: the ledger knows numbers, people know names. */
@TemplateExtension(namespace = "person")
public final class PersonInWords {

    private PersonInWords() {}

    /** The person's name; the number of somebody whose name was deleted. */
    public static String name(String number) {
        return PersonName.of(number).map(row -> row.fullName).orElse(number);
    }
}
