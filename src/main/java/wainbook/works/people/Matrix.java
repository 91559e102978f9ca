package wainbook.works.people;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.Person;
import wainbook.works.Person.Competence;
import wainbook.works.people.Roster.Member;

/**
 * People against competences, each with its last day; what ends first comes first, both ways.
 *
 * @param only the competence whose holders are shown; empty for all
 */
public record Matrix(List<Member> members, LocalDate today, String only, boolean mayTrain) {

    /** How long before its last day a competence is said to be ending: time to arrange for a course. */
    static final int SOON_DAYS = 60;

    /** How a competence stands on a day. */
    public enum Standing {
        NONE,
        VALID,
        ENDING,
        NOT_YET,
        EXPIRED,
        WITHDRAWN;

        static Standing of(Optional<Competence> held, LocalDate today) {
            if (held.isEmpty()) {
                return NONE;
            }
            Competence one = held.get();
            if (one.withdrawn()) {
                return WITHDRAWN;
            } else if (today.isAfter(one.validTo())) {
                return EXPIRED;
            } else if (today.isBefore(one.validFrom())) {
                return NOT_YET;
            }
            return today.plusDays(SOON_DAYS).isAfter(one.validTo()) ? ENDING : VALID;
        }

        public boolean bad() {
            return this == EXPIRED || this == WITHDRAWN;
        }
    }

    /** One field of the matrix, and one line of a person's page. */
    public record Cell(Standing standing, Optional<Competence> held) {
        public int level() {
            return held.map(Competence::level).orElse(0);
        }

        public boolean toRenew() {
            return standing == Standing.ENDING || standing == Standing.EXPIRED;
        }

        /** When a renewal begins: joined to what is valid, or today. */
        LocalDate nextFrom(LocalDate today) {
            return held.filter(one -> !one.withdrawn())
                    .map(one -> one.validTo().plusDays(1))
                    .filter(day -> day.isAfter(today))
                    .orElse(today);
        }

        public String words() {
            return held.map(one -> Words.of("works.standing." + standing, Formats.date(one.validTo())))
                    .orElse("");
        }
    }

    /** One person's row. */
    public record Row(Member member, List<Cell> cells) {
        public String path() {
            return "/people/" + member.person().number();
        }
    }

    public Matrix {
        members = List.copyOf(members);
    }

    static Cell cell(Person person, String code, LocalDate today) {
        Optional<Competence> held = person.competence(code);
        return new Cell(Standing.of(held, today), held);
    }

    public List<String> codes() {
        return members.stream()
                .flatMap(member -> member.person().competences().keySet().stream())
                .distinct()
                .sorted(Comparator.comparing(this::firstEndOf).thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    public List<Row> rows() {
        List<String> codes = codes();
        return members.stream()
                .filter(member -> !member.person().competences().isEmpty())
                .filter(member ->
                        only.isEmpty() || member.person().competence(only).isPresent())
                .sorted(Comparator.comparing((Member member) -> firstEnd(member))
                        .thenComparing((Member member) -> member.person().number()))
                .map(member -> new Row(
                        member,
                        codes.stream()
                                .map(code -> cell(member.person(), code, today))
                                .toList()))
                .toList();
    }

    public Form form() {
        return Form.EMPTY.with("competence", only);
    }

    public List<Option> options() {
        return codes().stream().sorted().map(code -> new Option(code, code)).toList();
    }

    public String csv() {
        return "/people/competences.csv?competence=" + URLEncoder.encode(only, StandardCharsets.UTF_8);
    }

    /** One line for each competence somebody holds. */
    List<List<String>> lines() {
        return rows().stream()
                .flatMap(row -> row.cells().stream()
                        .flatMap(cell -> cell.held().stream()
                                .filter(held -> only.isEmpty() || held.code().equals(only))
                                .map(held -> line(row.member(), held, cell))))
                .toList();
    }

    private static List<String> line(Member member, Competence held, Cell cell) {
        return List.of(
                member.person().number(),
                member.name(),
                held.code(),
                String.valueOf(held.level()),
                held.validFrom().toString(),
                held.validTo().toString(),
                cell.words());
    }

    private LocalDate firstEndOf(String code) {
        return members.stream()
                .flatMap(member -> member.person().competence(code).stream())
                .map(Competence::validTo)
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }

    private static LocalDate firstEnd(Member member) {
        return member.person().competences().values().stream()
                .filter(one -> !one.withdrawn())
                .map(Competence::validTo)
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }
}
