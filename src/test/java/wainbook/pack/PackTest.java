package wainbook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wainbook.pack.OnePack.NINE;
import static wainbook.pack.OnePack.checked;
import static wainbook.pack.OnePack.judged;
import static wainbook.pack.OnePack.read;
import static wainbook.pack.OnePack.received;
import static wainbook.pack.OnePack.sentOff;
import static wainbook.pack.OnePack.setAside;

import jakarta.ws.rs.NotFoundException;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.ledger.Subject;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Outside;
import wainbook.pack.PackSaying.PartKept;
import wainbook.pack.PackSaying.Remark;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.watch.Alarm;
import wainbook.pack.watch.Temperatures;

/** How a pack stands after each of its entries. */
class PackTest {

    private final OnePack one = new OnePack();

    @Test
    void a_pack_of_which_nothing_was_said_is_none() {
        assertThat(Pack.of(one.history())).isEmpty();
        assertThat(Pack.of(one.say(new PartKept("PACK")).history())).isEmpty();
        assertThat(one.say(setAside()).pack().serial()).isEqualTo(OnePack.SERIAL);
    }

    @Test
    void a_serial_is_forty_letters_digits_dots_dashes_and_underscores_and_begins_with_no_mark() {
        for (String serial : List.of("1", "PK-1", "a.b_c-9", "x".repeat(40))) {
            assertThat(Serials.fits(serial)).as(serial).isTrue();
            assertThat(Serials.subject(serial)).isEqualTo(new Subject(Subject.Sort.UNIT, serial));
        }
        for (String serial : List.of("", "-1", "PK 1", "PK/1", "x".repeat(41))) {
            assertThat(Serials.fits(serial)).as(serial).isFalse();
            assertThatThrownBy(() -> Serials.subject(serial)).isInstanceOf(NotFoundException.class);
        }
    }

    @Test
    void only_what_the_receipt_found_in_order_is_accepted() {
        assertThat(one.say(received(Verdict.SET_ASIDE)).pack().accepted()).isFalse();
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().accepted()).isTrue();
        assertThat(new OnePack().say(setAside()).pack().accepted()).isFalse();
    }

    @Test
    void a_pack_that_came_in_damaged_is_accepted_once_it_was_judged_sound_and_not_before() {
        one.say(received(Verdict.QUARANTINED)).say(setAside());
        assertThat(one.pack().quarantined()).isTrue();
        assertThat(one.pack().setAside()).isTrue();
        assertThat(one.pack().accepted()).isFalse();
        assertThat(new OnePack()
                        .say(received(Verdict.QUARANTINED))
                        .say(setAside())
                        .say(judged(Judgement.DEFECTIVE))
                        .pack()
                        .accepted())
                .isFalse();
        one.say(judged(Judgement.SOUND));
        assertThat(one.pack().quarantined()).isFalse();
        assertThat(one.pack().setAside()).isFalse();
        assertThat(one.pack().accepted()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Remark.class)
    void a_judgement_answers_what_was_seen_and_neither_a_measurement_nor_a_missing_paper(Remark remark) {
        assertThat(soundAfter(Remark.NOT_SOUND, remark)).isEqualTo(remark == Remark.NOT_SOUND);
    }

    private static boolean soundAfter(Remark... remarks) {
        return new OnePack()
                .say(received(Verdict.QUARANTINED, remarks))
                .say(setAside())
                .say(judged(Judgement.SOUND))
                .pack()
                .accepted();
    }

    @Test
    void a_judgement_from_before_the_receipt_says_nothing_of_what_the_receipt_found() {
        one.say(setAside()).say(judged(Judgement.SOUND)).say(received(Verdict.QUARANTINED));
        assertThat(one.pack().accepted()).isFalse();
    }

    @Test
    void a_pack_that_was_sound_and_waits_for_papers_is_not_accepted_by_its_judgement() {
        one.say(received(Verdict.SET_ASIDE)).say(setAside()).say(judged(Judgement.SOUND));
        assertThat(one.pack().accepted()).isFalse();
    }

    @Test
    void a_lot_is_held_while_a_pack_of_it_is_open_and_after_it_only_by_that_judgement() {
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().holdsLot()).isFalse();
        assertThat(one.say(setAside()).pack().holdsLot()).isTrue();
        assertThat(one.say(judged(Judgement.DEFECTIVE)).pack().holdsLot()).isFalse();
        assertThat(one.say(judged(Judgement.DEFECTIVE_LOT)).pack().holdsLot()).isTrue();
        assertThat(one.pack().setAside()).isTrue();
        assertThat(one.say(judged(Judgement.SOUND)).pack().holdsLot()).isFalse();
    }

    @Test
    void its_lot_is_what_the_receipt_says_and_before_it_what_was_said_on_setting_it_aside() {
        one.say(setAside(Optional.empty(), Optional.of("LOT-3"), false));
        assertThat(one.pack().lot()).contains("LOT-3");
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().lot()).contains("LOT-7");
        assertThat(new OnePack().say(setAside()).pack().lot()).isEmpty();
    }

    @Test
    void it_lies_where_it_was_put_last_and_setting_it_aside_without_a_place_moves_nothing() {
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().place()).contains("R-1");
        assertThat(one.say(checked("R-2")).pack().place()).contains("R-2");
        assertThat(one.say(setAside()).pack().place()).contains("R-2");
        assertThat(one.say(setAside(Optional.of("YARD"), Optional.empty(), false))
                        .pack()
                        .place())
                .contains("YARD");
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().place()).contains("R-1");
        assertThat(new OnePack().say(setAside()).pack().place()).isEmpty();
    }

    @Test
    void the_next_check_is_owed_three_months_after_the_last_look_by_the_calendar_of_the_works() {
        Instant lateInUtc = Instant.parse("2026-11-30T23:30:00Z");
        one.say(lateInUtc, received(Verdict.ACCEPTED));
        assertThat(one.pack().checkDue(ZoneOffset.UTC)).contains(LocalDate.of(2027, 2, 28));
        assertThat(one.pack().checkDue(ZoneId.of("Europe/Berlin"))).contains(LocalDate.of(2027, 3, 1));
        one.say(Instant.parse("2027-01-04T08:00:00Z"), checked("R-1", Outside.COLD));
        assertThat(one.pack().checkDue(ZoneOffset.UTC)).contains(LocalDate.of(2027, 4, 4));
        assertThat(new OnePack().say(setAside()).pack().checkDue(ZoneOffset.UTC))
                .isEmpty();
    }

    @Test
    void charge_and_window_are_those_of_the_last_look_and_a_new_receipt_is_a_new_first_look() {
        one.say(received(Verdict.ACCEPTED));
        assertThat(one.pack().chargePercent()).contains(new BigDecimal("40"));
        assertThat(one.pack().outside()).isEmpty();
        one.say(checked("R-1", Outside.COLD, Outside.DAMP));
        assertThat(one.pack().chargePercent()).contains(new BigDecimal("38"));
        assertThat(one.pack().outside()).containsExactly(Outside.COLD, Outside.DAMP);
        assertThat(one.pack().looked()).isEqualTo(one.pack().checkedBy());
        one.say(received(Verdict.ACCEPTED));
        assertThat(one.pack().chargePercent()).contains(new BigDecimal("40"));
        assertThat(one.pack().looked()).isEqualTo(one.pack().receivedBy());
    }

    @Test
    void a_pack_that_left_is_gone_until_it_is_received_or_set_aside_here_again() {
        one.say(received(Verdict.ACCEPTED)).say(sentOff());
        assertThat(one.pack().gone()).isTrue();
        assertThat(one.pack().sentOff()).contains(sentOff());
        assertThat(one.say(received(Verdict.ACCEPTED)).pack().gone()).isFalse();
        assertThat(one.say(sentOff()).say(setAside()).pack().gone()).isFalse();
        assertThat(one.pack().received()).isPresent();
    }

    @Test
    void what_is_said_between_keeps_all_that_was_known() {
        one.say(received(Verdict.ACCEPTED)).say(checked("R-2")).say(setAside()).say(read());
        one.say(judged(Judgement.DEFECTIVE)).say(sentOff()).say(checked("R-3")).say(read());
        Pack pack = one.pack();
        assertThat(pack.gone()).isTrue();
        assertThat(pack.received()).isPresent();
        assertThat(pack.checked().orElseThrow().place()).isEqualTo("R-3");
        assertThat(pack.quarantine().orElseThrow().watched()).hasSize(2);
        assertThat(pack.quarantine().orElseThrow().is(Judgement.DEFECTIVE)).isTrue();
    }

    @Test
    void a_watch_runs_from_setting_aside_and_an_alarm_begins_it_anew() {
        one.say(NINE, setAside()).say(minute(0), read()).say(minute(15), read());
        assertThat(one.pack().quarantine().orElseThrow().alarm()).isEmpty();
        assertThat(one.pack().quarantine().orElseThrow().times().from()).isEqualTo(NINE);
        assertThat(one.pack().quarantine().orElseThrow().times().readAt()).containsExactly(minute(0), minute(15));
        one.say(minute(30), read(Alarm.RISE)).say(minute(45), read());
        assertThat(one.pack().quarantine().orElseThrow().times().from()).isEqualTo(minute(30));
        assertThat(one.pack().quarantine().orElseThrow().times().readAt())
                .as("the reading with the alarm is the first of the new watch")
                .containsExactly(minute(30), minute(45));
        one.say(minute(60), read(Alarm.HOT));
        assertThat(one.pack().quarantine().orElseThrow().times().from()).isEqualTo(minute(60));
        assertThat(one.pack().quarantine().orElseThrow().readings())
                .hasSize(5)
                .last()
                .isEqualTo(new Temperatures(minute(60), new BigDecimal("20"), new BigDecimal("18")));
    }

    @Test
    void set_aside_again_it_is_watched_and_judged_anew() {
        one.say(NINE, setAside()).say(minute(0), read(Alarm.HOT)).say(judged(Judgement.SOUND));
        one.say(minute(90), setAside());
        assertThat(one.pack().quarantined()).isTrue();
        assertThat(one.pack().quarantine().orElseThrow().times().from()).isEqualTo(minute(90));
        assertThat(one.pack().quarantine().orElseThrow().readings()).isEmpty();
    }

    private static Instant minute(int minute) {
        return NINE.plus(Duration.ofMinutes(minute));
    }
}
