package wainbook.works.people;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.Person.Competence;
import wainbook.works.people.Roster.Member;

/** People against competences, each with its last day; what ends first comes first, both ways. */
public record Matrix(List<Member> members, LocalDate today) {

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
        public String words() {
            return held.map(one -> Words.of("works.standing." + standing, Formats.date(one.validTo())))
                    .orElse("");
        }
    }

    /** One person's row. */
    public record Row(Member member, List<Cell> cells) {}

    public Matrix {
        members = List.copyOf(members);
    }

    static Cell cell(Member member, String code, LocalDate today) {
        Optional<Competence> held = member.person().competence(code);
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
                .sorted(Comparator.comparing((Member member) -> firstEnd(member))
                        .thenComparing((Member member) -> member.person().number()))
                .map(member -> new Row(
                        member,
                        codes.stream().map(code -> cell(member, code, today)).toList()))
                .toList();
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
