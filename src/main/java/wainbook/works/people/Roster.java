package wainbook.works.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Words;
import wainbook.works.Person;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;
import wainbook.works.Role;

/** Everybody, with what they may do. */
@ApplicationScoped
public class Roster {

    /** One of them, with the name that stands outside the ledger. */
    public record Member(Person person, String name) {
        public String roles() {
            return String.join(
                    ", ",
                    person.roles().stream()
                            .map(role -> Words.of("works." + role.word()))
                            .toList());
        }
    }

    private final Ledger ledger;

    Roster(Ledger ledger) {
        this.ledger = ledger;
    }

    List<Member> everybody() {
        return PersonRow.everybody().stream().map(row -> member(row.number)).toList();
    }

    /** The highest number given; empty before the first. */
    String lastNumber() {
        return PersonRow.everybody().stream()
                .map(row -> row.number)
                .max(Comparator.naturalOrder())
                .orElse("");
    }

    /** Who fits a search by number or name, and a role; of those who left only if asked for. */
    List<Member> found(String search, Optional<Role> role, boolean left) {
        String wanted = search.toLowerCase(Words.LOCALE);
        return everybody().stream()
                .filter(one -> one.person().left() == left)
                .filter(one -> role.filter(only -> !one.person().roles().contains(only))
                        .isEmpty())
                .filter(one -> one.name().toLowerCase(Words.LOCALE).contains(wanted)
                        || one.person().number().toLowerCase(Words.LOCALE).contains(wanted))
                .toList();
    }

    Member member(String number) {
        return new Member(Person.of(ledger.history(Subject.person(number))), PersonInWords.name(number));
    }
}
