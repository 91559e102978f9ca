package wainbook.pack.act;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.pack.OnePack.NINE;
import static wainbook.pack.OnePack.judged;
import static wainbook.pack.OnePack.read;
import static wainbook.pack.OnePack.received;
import static wainbook.pack.OnePack.sentOff;
import static wainbook.pack.OnePack.setAside;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.pack.OnePack;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.watch.Alarm;
import wainbook.works.Person;
import wainbook.works.Person.Competence;

/** Who judges a pack, and when one may be found sound; who looks at one in storage. */
class JudgementRuleTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 11);
    private static final int DAY = 24 * 60;

    private final OnePack one = new OnePack();

    @Test
    void after_a_whole_watch_a_person_for_live_work_finds_it_sound() {
        watched(times());
        assertThat(judge(Judgement.SOUND, 3, DAY)).isEmpty();
        assertThat(judge(Judgement.SOUND, 2, DAY)).containsExactly("pack.levelTooLow");
        assertThat(judge(Judgement.SOUND, 1, DAY)).containsExactly("pack.levelTooLow");
    }

    @Test
    void until_its_last_reading_it_is_not_found_sound_and_the_answer_says_when_that_is() {
        int[] all = times();
        watched(IntStream.of(all).limit(all.length - 1).toArray());
        List<Reason> against = against(Judgement.SOUND, 3, DAY - 1);
        assertThat(against).extracting(Reason::key).containsExactly("pack.watchNotOver");
        assertThat(against.get(0).arguments()).containsExactly(OnePack.SERIAL, "2026-03-11T09:00:00Z");
        assertThat(against.get(0).lift()).contains("/packs/PK-1#watch");
        one.say(minute(DAY), read());
        assertThat(judge(Judgement.SOUND, 3, DAY)).isEmpty();
    }

    @Test
    void an_alarm_on_the_way_takes_another_whole_day() {
        watched(times());
        one.say(minute(DAY + 1), read(Alarm.RISE));
        assertThat(judge(Judgement.SOUND, 3, DAY + 2)).containsExactly("pack.watchNotOver");
    }

    @Test
    void two_missed_readings_are_answered_for_and_three_begin_the_watch_anew() {
        watched(without(120, 180));
        assertThat(judge(Judgement.SOUND, 3, DAY)).isEmpty();
        OnePack other = new OnePack().say(NINE, setAside());
        for (int minute : without(120, 180, 240)) {
            other.say(minute(minute), read());
        }
        List<Reason> against =
                JudgementRule.against(other.history(), Judgement.SOUND, person(3, TODAY), minute(DAY), TODAY);
        assertThat(against).extracting(Reason::key).containsExactly("pack.watchGaps");
        assertThat(against.get(0).arguments()).containsExactly(OnePack.SERIAL, "3", "2");
        assertThat(against.get(0).lift()).contains("/packs/damaged?serial=PK-1");
    }

    @Test
    void defective_is_said_at_any_time_but_by_the_same_people() {
        one.say(NINE, setAside());
        for (Judgement defective : List.of(Judgement.DEFECTIVE, Judgement.DEFECTIVE_LOT)) {
            assertThat(judge(defective, 3, 0)).isEmpty();
            assertThat(judge(defective, 2, 0)).containsExactly("pack.levelTooLow");
        }
    }

    @Test
    void what_was_found_defective_may_still_be_found_sound_and_what_is_sound_is_judged_no_more() {
        watched(times());
        one.say(minute(DAY), judged(Judgement.DEFECTIVE));
        assertThat(judge(Judgement.SOUND, 3, DAY)).isEmpty();
        one.say(minute(DAY), judged(Judgement.SOUND));
        assertThat(judge(Judgement.DEFECTIVE, 3, DAY)).containsExactly("pack.notInQuarantine");
        assertThat(against(Judgement.DEFECTIVE, 3, DAY).get(0).lift()).contains("/packs/PK-1");
        assertThat(keys(JudgementRule.against(new OnePack().history(), Judgement.SOUND, person(3, TODAY), NINE, TODAY)))
                .containsExactly("pack.notInQuarantine");
    }

    @Test
    void a_competence_serves_on_its_last_day_and_no_longer() {
        one.say(NINE, setAside());
        assertThat(keys(JudgementRule.against(
                        one.history(), Judgement.DEFECTIVE, person(3, TODAY.minusDays(1)), NINE, TODAY)))
                .containsExactly("works.competenceExpired");
        assertThat(keys(JudgementRule.against(
                        one.history(),
                        Judgement.DEFECTIVE,
                        new Person("7001", List.of(), false, Map.of()),
                        NINE,
                        TODAY)))
                .containsExactly("works.competenceMissing");
    }

    @Test
    void a_judgement_says_what_it_rests_on_in_five_hundred_characters_at_most() {
        assertThat(JudgementRule.words("x".repeat(500))).isEmpty();
        for (String fault : List.of("", "  ", "x".repeat(501))) {
            assertThat(JudgementRule.words(fault).map(Reason::key)).contains("pack.judgementWordsMissing");
            assertThat(JudgementRule.words(fault).flatMap(Reason::lift)).contains("#words");
        }
    }

    @Test
    void a_level_is_enough_from_the_one_that_is_asked_for() {
        for (int level = 1; level <= 4; level++) {
            Person person = person(level, TODAY);
            assertThat(Qualified.INSTRUCTED.against(person, TODAY)).isEmpty();
            assertThat(Qualified.COMPETENT.against(person, TODAY).isEmpty()).isEqualTo(level >= 2);
            assertThat(Qualified.FOR_LIVE_WORK.against(person, TODAY).isEmpty()).isEqualTo(level >= 3);
        }
        assertThat(Qualified.COMPETENT
                        .against(person(1, TODAY), TODAY)
                        .orElseThrow()
                        .arguments())
                .containsExactly("HV", "2", "1");
        assertThat(Qualified.authority(person(2, TODAY)).level()).isEqualTo(2);
        assertThat(Qualified.authority(person(2, TODAY)).validTo()).isEqualTo(TODAY);
    }

    @Test
    void in_storage_is_looked_at_what_was_received_and_is_still_here_and_not_set_aside() {
        assertThat(look(new OnePack(), 1)).containsExactly("pack.notReceived /packs/new?serial=PK-1");
        one.say(received(Verdict.ACCEPTED));
        assertThat(look(one, 1)).isEmpty();
        assertThat(keys(StorageRule.against(one.history(), person(1, TODAY.minusDays(1)), TODAY)))
                .containsExactly("works.competenceExpired");
        one.say(setAside());
        assertThat(look(one, 1)).containsExactly("pack.inQuarantine /packs/PK-1");
        one.say(judged(Judgement.DEFECTIVE));
        assertThat(look(one, 1)).containsExactly("pack.inQuarantine /packs/PK-1");
        one.say(judged(Judgement.SOUND));
        assertThat(look(one, 1)).isEmpty();
        one.say(sentOff());
        assertThat(look(one, 1)).containsExactly("pack.sentAway /packs/PK-1");
    }

    private static List<String> look(OnePack pack, int level) {
        return StorageRule.against(pack.history(), person(level, TODAY), TODAY).stream()
                .map(reason -> reason.key() + " " + reason.lift().orElse(""))
                .toList();
    }

    private void watched(int... minutes) {
        one.say(NINE, setAside());
        for (int minute : minutes) {
            one.say(minute(minute), read());
        }
    }

    /** 0, 15, 30, 60 minutes, then hourly for 24 hours. */
    private static int[] times() {
        return IntStream.concat(
                        IntStream.of(0, 15, 30, 60),
                        IntStream.rangeClosed(2, 24).map(hour -> hour * 60))
                .toArray();
    }

    private static int[] without(Integer... missed) {
        return IntStream.of(times())
                .filter(minute -> !List.of(missed).contains(minute))
                .toArray();
    }

    private List<String> judge(Judgement judgement, int level, int minute) {
        return keys(against(judgement, level, minute));
    }

    private List<Reason> against(Judgement judgement, int level, int minute) {
        return JudgementRule.against(one.history(), judgement, person(level, TODAY), minute(minute), TODAY);
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static Person person(int level, LocalDate to) {
        return new Person(
                "7001",
                List.of(),
                false,
                Map.of("HV", new Competence("HV", level, LocalDate.of(2026, 1, 1), to, Optional.empty())));
    }

    private static Instant minute(int minute) {
        return NINE.plus(Duration.ofMinutes(minute));
    }
}
