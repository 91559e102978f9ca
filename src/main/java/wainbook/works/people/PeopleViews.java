package wainbook.works.people;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.people.Roster.Member;

/** What the pages about people show. */
public final class PeopleViews {

    private PeopleViews() {}

    static List<Option> roles() {
        return Arrays.stream(Role.values())
                .map(role -> new Option(role.word(), Words.of("works." + role.word())))
                .toList();
    }

    /** The list as it was searched. */
    public record Listed(List<Member> members, Form form, String csv, boolean mayEngage) {
        public List<Option> roles() {
            return PeopleViews.roles();
        }
    }

    /**
     * The form for somebody new.
     *
     * @param lastNumber the last that was given, so that the next one can follow it
     */
    public record Engaging(Filled filled, List<String> ticked, String lastNumber) {
        public List<Option> roles() {
            return PeopleViews.roles();
        }
    }

    /** One competence on a person's page. */
    public record Held(String code, Matrix.Cell cell) {}

    /**
     * One person, with the forms that the reader may use.
     *
     * @param user the name to sign in by, for those who keep it
     */
    public record One(
            Member member,
            Optional<String> user,
            long seen,
            LocalDate today,
            Filled filled,
            List<String> ticked,
            List<Reason> againstGiving,
            boolean mayStaff,
            boolean mayTrain) {

        public List<Held> held() {
            return member.person().competences().values().stream()
                    .sorted(Comparator.comparing(one -> one.validTo()))
                    .map(one -> new Held(one.code(), Matrix.cell(member.person(), one.code(), today)))
                    .toList();
        }

        public List<Option> roles() {
            return PeopleViews.roles();
        }

        public UUID actId() {
            return UUID.randomUUID();
        }

        public String path() {
            return "/people/" + member.person().number();
        }
    }
}
