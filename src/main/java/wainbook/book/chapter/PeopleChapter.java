package wainbook.book.chapter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.Person;

/** Who acted, by number and role. Names stay in the works; how much or how well anybody did is nobody's business here. */
final class PeopleChapter {

    private PeopleChapter() {}

    static Chapter of(Material material) {
        return new Manuscript("people", Words.of("printed.people"))
                .text(Words.of("printed.peopleIntro"))
                .grid(
                        new Grid(
                                List.of(
                                        Grid.column(Words.of("printed.person"), 2),
                                        Grid.column(Words.of("printed.roles"), 5),
                                        Grid.column(Words.of("printed.didIn"), 6),
                                        Grid.column(Words.of("printed.competences"), 7)),
                                Acting.in(material.history()).entrySet().stream()
                                        .map(acting -> row(material, acting))
                                        .toList()),
                        Words.of("printed.nobody"))
                .end();
    }

    private static Row row(Material material, Map.Entry<String, Acting> acting) {
        return Row.of(
                acting.getKey(),
                Optional.ofNullable(material.people().get(acting.getKey())).stream()
                        .map(Person::roles)
                        .flatMap(List::stream)
                        .map(role -> Words.of("works." + role.word()))
                        .collect(Collectors.joining(", ")),
                acting.getValue().rooms().stream()
                        .map(room -> Words.find("book.kind." + room).orElse(room))
                        .collect(Collectors.joining(", ")),
                acting.getValue().competences().stream()
                        .map(held -> Words.of(
                                "book.byCompetence", held.competence(), held.level(), Formats.date(held.validTo())))
                        .sorted()
                        .collect(Collectors.joining("; ")));
    }
}
