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
        Codes numbers = Codes.of(people, Lines.Person::number, "number", "people.csv", faults, "person’s number");
        Codes.of(people, Lines.Person::user, "user", "people.csv", faults, "user name");
        Codes.of(
                competences,
                line -> line.person() + " " + line.competence(),
                "competence",
                "competences.csv",
                faults,
                "competence");
        var form = new Form(faults);
        for (Located<Lines.Person> person : people) {
            form.code(person.value().number(), person.at("number"));
            form.name(person.value().user(), person.at("user"));
            form.title(person.value().name(), person.at("name"));
            person.value().roles().stream()
                    .filter(word -> Role.of(word).isEmpty())
                    .forEach(word -> faults.add(Fault.of(person.at("roles"), "unknownCode", word, roles())));
        }
        for (Located<Lines.Competence> competence : competences) {
            form.code(competence.value().competence(), competence.at("competence"));
            form.day(competence.value().fromDay(), competence.at("from_day"));
            form.day(competence.value().toDay(), competence.at("to_day"));
            numbers.require(competence.value().person(), competence.at("person"));
            if (competence.value().fromDay() > competence.value().toDay()) {
                faults.add(Fault.of(
                        competence.at("to_day"),
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
