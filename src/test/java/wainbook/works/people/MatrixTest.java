package wainbook.works.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.works.Person;
import wainbook.works.Person.Competence;
import wainbook.works.people.Matrix.Standing;
import wainbook.works.people.Roster.Member;

class MatrixTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    @ParameterizedTest
    @CsvSource({
        "2026-03-01, EXPIRED",
        "2026-03-02, ENDING",
        "2026-04-30, ENDING",
        "2026-05-01, VALID",
        "2027-01-01, VALID"
    })
    void a_competence_is_said_to_be_ending_sixty_days_before_and_ends_after_its_last_day(
            LocalDate last, Standing standing) {
        assertThat(Standing.of(Optional.of(held("HV", last)), TODAY)).isEqualTo(standing);
    }

    @Test
    void what_is_withdrawn_or_still_to_come_is_said_so() {
        var later = new Competence("HV", 0, TODAY.plusDays(1), TODAY.plusYears(1), Optional.empty());
        assertThat(Standing.of(Optional.of(later), TODAY)).isEqualTo(Standing.NOT_YET);
        var gone = new Competence("HV", 0, TODAY, TODAY.plusYears(1), Optional.of(Instant.EPOCH));
        assertThat(Standing.of(Optional.of(gone), TODAY)).isEqualTo(Standing.WITHDRAWN);
        assertThat(Standing.of(Optional.empty(), TODAY)).isEqualTo(Standing.NONE);
    }

    @Test
    void what_ends_first_comes_first_both_ways_and_who_holds_nothing_is_left_out() {
        var matrix = new Matrix(
                List.of(
                        member("1", held("HV", TODAY.plusDays(300))),
                        member("2", held("HV", TODAY.plusDays(200)), held("LIFTING", TODAY.plusDays(10))),
                        member("3")),
                TODAY,
                "",
                false);
        assertThat(matrix.codes()).containsExactly("LIFTING", "HV");
        assertThat(matrix.rows())
                .extracting(row -> row.member().person().number())
                .containsExactly("2", "1");
        assertThat(matrix.rows().get(1).cells())
                .extracting(Matrix.Cell::standing)
                .containsExactly(Standing.NONE, Standing.VALID);
    }

    private static Competence held(String code, LocalDate last) {
        return new Competence(code, 0, LocalDate.of(2026, 1, 5).minusYears(1), last, Optional.empty());
    }

    private static Member member(String number, Competence... held) {
        var competences = Arrays.stream(held).collect(Collectors.toMap(Competence::code, one -> one));
        return new Member(new Person(number, List.of(), false, Map.copyOf(competences)), "Name " + number);
    }
}
