package wainbook.setup.files;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.works.Role;

/** What must hold between people and their competences. */
record PeopleChecks(
        List<Located<Lines.Person>> people, List<Located<Lines.Competence>> competences, List<Fault> faults) {

    /** Hands on the people's numbers. */
    Codes run() {
        Codes numbers = Codes.of(people, Lines.Person::number, "people.csv", faults, "person’s number");
        Codes.of(people, Lines.Person::user, "people.csv", faults, "user name");
        for (Located<Lines.Person> person : people) {
            person.value().roles().stream()
                    .filter(word -> Role.of(word).isEmpty())
                    .forEach(word -> faults.add(Fault.of(person.place().field("roles"), "unknownCode", word, roles())));
        }
        for (Located<Lines.Competence> competence : competences) {
            numbers.require(competence.value().person(), competence.place().field("person"));
            if (competence.value().fromDay() > competence.value().toDay()) {
                faults.add(Fault.of(
                        competence.place().field("to_day"),
                        "endsBeforeItBegins",
                        String.valueOf(competence.value().toDay()),
                        competence.value().fromDay() + " or later"));
            }
        }
        return numbers;
    }

    private static String roles() {
        return Arrays.stream(Role.values()).map(Role::word).collect(Collectors.joining(", "));
    }
}
