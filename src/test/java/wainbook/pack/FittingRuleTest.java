package wainbook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.pack.OnePack.judged;
import static wainbook.pack.OnePack.received;
import static wainbook.pack.OnePack.sentOff;
import static wainbook.pack.OnePack.setAside;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Verdict;

/** Which packs go into a vehicle, and what is in the way of the others. */
class FittingRuleTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final LocalDate CHECK_DUE = LocalDate.of(2026, 6, 10);
    private static final Optional<String> NONE = Optional.empty();

    private final OnePack one = new OnePack();

    @Test
    void a_part_that_the_works_keeps_is_fitted_only_with_a_serial_that_was_received() {
        List<Reason> against = against(true, Optional.empty(), false);
        assertThat(keys(against)).containsExactly("pack.notReceived");
        assertThat(against.get(0).arguments()).containsExactly(OnePack.SERIAL);
        assertThat(against.get(0).lift()).contains("/packs/new?serial=PK-1");
        assertThat(against(true, Optional.empty(), true))
                .as("it was in the vehicle before the works kept the part")
                .isEmpty();
        assertThat(against(false, Optional.empty(), false))
                .as("no pack of this works")
                .isEmpty();
    }

    @Test
    void an_accepted_pack_is_fitted() {
        one.say(received(Verdict.ACCEPTED));
        assertThat(against(true, Optional.of(one.pack()), false)).isEmpty();
    }

    @Test
    void each_way_of_not_being_ready_is_its_own_reason_and_leads_to_the_pack() {
        assertStands("pack.notAccepted", new OnePack().say(received(Verdict.SET_ASIDE)));
        assertStands(
                "pack.inQuarantine",
                new OnePack().say(received(Verdict.ACCEPTED)).say(setAside()));
        assertStands(
                "pack.defective",
                new OnePack().say(received(Verdict.ACCEPTED)).say(setAside()).say(judged(Judgement.DEFECTIVE)));
        assertStands(
                "pack.defective",
                new OnePack().say(received(Verdict.ACCEPTED)).say(setAside()).say(judged(Judgement.DEFECTIVE_LOT)));
        assertStands(
                "pack.sentAway", new OnePack().say(received(Verdict.ACCEPTED)).say(sentOff()));
    }

    private static void assertStands(String key, OnePack pack) {
        List<Reason> against = new FittingRule(OnePack.SERIAL, false, Optional.of(pack.pack()), NONE, true)
                .against(TODAY, ZoneOffset.UTC);
        assertThat(keys(against)).containsExactly(key);
        assertThat(against.get(0).arguments()).containsExactly(OnePack.SERIAL);
        assertThat(against.get(0).lift()).contains("/packs/PK-1");
    }

    @Test
    void judged_sound_a_pack_is_fitted_again() {
        one.say(received(Verdict.ACCEPTED)).say(setAside()).say(judged(Judgement.SOUND));
        assertThat(against(true, Optional.of(one.pack()), false)).isEmpty();
    }

    @Test
    void a_lot_that_another_pack_holds_holds_this_one_too_and_names_both() {
        one.say(received(Verdict.ACCEPTED));
        List<Reason> against = new FittingRule(
                        OnePack.SERIAL, true, Optional.of(one.pack()), Optional.of("PK-9"), false)
                .against(TODAY, ZoneOffset.UTC);
        assertThat(keys(against)).containsExactly("pack.lotHeld");
        assertThat(against.get(0).arguments()).containsExactly(OnePack.SERIAL, "LOT-7", "PK-9");
        assertThat(against.get(0).lift()).contains("/packs/PK-9");
    }

    @Test
    void a_check_in_storage_may_be_done_until_its_day_is_over_and_a_fitted_pack_owes_none() {
        one.say(received(Verdict.ACCEPTED));
        assertThat(on(CHECK_DUE, false)).isEmpty();
        assertThat(keys(on(CHECK_DUE.plusDays(1), false))).containsExactly("pack.checkOverdue");
        assertThat(on(CHECK_DUE.plusDays(1), false).get(0).arguments()).containsExactly(OnePack.SERIAL, "2026-06-10");
        assertThat(on(CHECK_DUE.plusDays(1), false).get(0).lift()).contains("/packs/PK-1/check");
        assertThat(on(CHECK_DUE.plusDays(1), true)).isEmpty();
    }

    @Test
    void everything_that_stands_against_it_is_said_at_once() {
        one.say(received(Verdict.ACCEPTED)).say(setAside()).say(sentOff());
        assertThat(keys(new FittingRule(OnePack.SERIAL, true, Optional.of(one.pack()), Optional.of("PK-9"), false)
                        .against(CHECK_DUE.plusDays(1), ZoneOffset.UTC)))
                .containsExactly("pack.sentAway", "pack.inQuarantine", "pack.lotHeld", "pack.checkOverdue");
    }

    private List<Reason> on(LocalDate day, boolean fitted) {
        return new FittingRule(OnePack.SERIAL, true, Optional.of(one.pack()), NONE, fitted)
                .against(day, ZoneOffset.UTC);
    }

    private static List<Reason> against(boolean kept, Optional<Pack> pack, boolean fitted) {
        return new FittingRule(OnePack.SERIAL, kept, pack, NONE, fitted).against(TODAY, ZoneOffset.UTC);
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}
