package wainbook.permit.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Precaution;
import wainbook.permit.Trait;
import wainbook.permit.Work;

/** A permit on paper is history: what it does not keep is said, and stops nothing. */
class PaperPermitRulesTest {

    private static final Instant NINE = Instant.parse("2026-03-02T09:00:00Z");
    private static final Optional<Instant> SHIFT_END = Optional.of(NINE.plus(Duration.ofHours(5)));

    private String receiver = "7002";
    private List<Precaution> ticked =
            List.of(Precaution.DRAINED, Precaution.GAS_FREE, Precaution.EXTINGUISHER, Precaution.FIRE_WATCH);
    private Optional<Instant> receivedAt = Optional.of(NINE.plusSeconds(300));
    private Instant validUntil = NINE.plus(Duration.ofHours(2));
    private Optional<Instant> back = Optional.of(NINE.plus(Duration.ofHours(1)));
    private Optional<Instant> closed = Optional.of(NINE.plus(Duration.ofHours(2)));

    @Test
    void a_form_as_it_should_be_has_no_remarks() {
        assertThat(remarks()).isEmpty();
    }

    @Test
    void each_rule_is_remarked_on_by_its_own_key() {
        receiver = "7001";
        assertThat(remarks()).containsExactly("permit.paperTwoPeople");
        receiver = "7002";
        ticked = ticked.subList(0, 3);
        assertThat(remarks()).containsExactly("permit.paperPrecautionMissing");
        ticked =
                Stream.concat(ticked.stream(), Stream.of(Precaution.FIRE_WATCH)).toList();
        receivedAt = Optional.empty();
        assertThat(remarks()).containsExactly("permit.paperNotReceived");
        receivedAt = Optional.of(NINE);
        validUntil = SHIFT_END.get().plusSeconds(60);
        assertThat(remarks()).containsExactly("permit.paperBeyondShift");
        validUntil = SHIFT_END.get();
        closed = Optional.of(back.get().plus(Duration.ofMinutes(59)));
        assertThat(remarks()).containsExactly("permit.paperFireWatch");
        back = Optional.empty();
        assertThat(remarks()).containsExactly("permit.paperNotHandedBack");
    }

    @Test
    void one_that_is_not_closed_is_open_and_not_blamed_for_it() {
        back = Optional.empty();
        closed = Optional.empty();
        assertThat(remarks()).isEmpty();
        assertThat(form().open()).isTrue();
        assertThat(form().traits()).containsExactlyInAnyOrder(Trait.HOT_WORK, Trait.FUEL_OPEN);
    }

    @Test
    void each_time_on_it_is_held_against_the_one_before_to_the_minute() {
        validUntil = NINE;
        assertThat(remarks()).containsExactly("permit.paperBeyondShift");
        validUntil = NINE.plusSeconds(60);
        assertThat(remarks()).isEmpty();
        assertThat(PaperPermitRules.remarks(form(), Optional.empty()))
                .as("off shift")
                .containsExactly("permit.paperBeyondShift");
        receivedAt = Optional.of(NINE.minusSeconds(60));
        assertThat(remarks()).containsExactly("permit.paperNotReceived");
        receivedAt = Optional.of(NINE);
        closed = Optional.of(back.get().minusSeconds(60));
        assertThat(remarks()).containsExactly("permit.paperNotHandedBack");
        closed = back;
        assertThat(remarks()).containsExactly("permit.paperFireWatch");
        closed = Optional.of(back.get().plus(Duration.ofMinutes(60)));
        assertThat(remarks()).isEmpty();
    }

    @Test
    void every_time_that_stands_on_it_is_known_but_its_end() {
        assertThat(form().times()).containsExactly(NINE, receivedAt.get(), back.get(), closed.get());
        back = Optional.empty();
        closed = Optional.empty();
        assertThat(form().times()).containsExactly(NINE, receivedAt.get());
        assertThat(form().open()).isTrue();
    }

    @Test
    void work_that_leaves_nothing_glowing_needs_no_watch_for_fire() {
        closed = back;
        PermitForm hot = form();
        var roof = new PermitForm(
                Work.HEIGHT,
                hot.work(),
                List.of(),
                List.of(new Ticked(Precaution.EDGE_PROTECTION, Optional.empty())),
                hot.issuer(),
                NINE,
                receiver,
                receivedAt,
                validUntil,
                back,
                closed);
        assertThat(PaperPermitRules.remarks(roof, SHIFT_END)).isEmpty();
        assertThat(roof.open()).isFalse();
    }

    private List<String> remarks() {
        return PaperPermitRules.remarks(form(), SHIFT_END);
    }

    private PermitForm form() {
        return new PermitForm(
                Work.HOT_WORK,
                "cut the old bracket",
                List.of(Trait.FUEL_OPEN),
                ticked.stream().map(one -> new Ticked(one, Optional.empty())).toList(),
                "7001",
                NINE,
                receiver,
                receivedAt,
                validUntil,
                back,
                closed);
    }
}
