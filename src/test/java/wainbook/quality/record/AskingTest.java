package wainbook.quality.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.quality.QualitySaying.Answer;
import wainbook.quality.record.Agreeing.ToAgree;
import wainbook.quality.record.Agreeing.ToEnd;
import wainbook.quality.record.Replying.ToAnswer;
import wainbook.quality.record.Replying.ToSettle;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Verdict;

/** Who is asked, who settles, and when statistics by person are on. */
@QuarkusTest
@Tag("database")
class AskingTest {

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    @Inject
    Agreeing agreeing;

    @Inject
    Questions questions;

    @Inject
    Replying replying;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    @BeforeEach
    void people() {
        Cast.assemble();
    }

    @Test
    void the_person_who_made_the_entry_is_asked_first_and_nobody_else() {
        Question question = slipped();

        assertThat(to(Cast.TECHNICIAN)).contains(question.id());
        assertThat(to(Cast.SECOND_TECHNICIAN)).doesNotContain(question.id());
        assertThat(withQuality()).doesNotContain(question.id());
        assertThat(keys(replying.answer(ToAnswer.of(question.id(), Answer.RIGHT, ""), actor(Cast.SECOND_TECHNICIAN))))
                .containsExactly("quality.notYourQuestion");
        assertThat(keys(replying.settle(ToSettle.of(question.id(), "seen"), actor(Cast.QUALITY_ENGINEER))))
                .containsExactly("quality.notWithQuality");
    }

    @Test
    void after_two_working_days_without_an_answer_it_is_with_quality() {
        Question question = slipped();
        Instant later = clock.instant().plusSeconds(11 * 86_400L);

        assertThat(questions.withQuality(Cast.QUALITY_ENGINEER.number(), later))
                .extracting(one -> one.question().id())
                .contains(question.id());
    }

    @Test
    void an_answer_changes_no_entry_and_brings_it_to_quality_who_settles_it_once() {
        Question question = slipped();
        Subject vehicle = Subject.workOrder(question.newest().order());
        long number = ledger.history(vehicle).number();

        assertThat(keys(replying.answer(ToAnswer.of(question.id(), Answer.SOMETHING_ELSE, ""), actor(Cast.TECHNICIAN))))
                .containsExactly("quality.wordsMissing");
        assertThat(keys(replying.answer(ToAnswer.of(question.id(), Answer.TYPED_WRONG, ""), actor(Cast.TECHNICIAN))))
                .isEmpty();
        assertThat(withQuality()).contains(question.id());
        assertThat(keys(replying.settle(
                        ToSettle.of(question.id(), "voided and read anew"), actor(Cast.QUALITY_ENGINEER))))
                .isEmpty();
        assertThat(keys(replying.settle(ToSettle.of(question.id(), "other words"), actor(Cast.QUALITY_ENGINEER))))
                .as("it is settled once")
                .isNotEmpty();
        assertThat(ledger.history(vehicle).number()).isEqualTo(number);
    }

    @Test
    void the_page_shows_a_question_to_its_person_and_takes_the_answer() {
        Question question = slipped();
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        assertThat(technician.page("/quality/questions"))
                .contains("Perhaps a slip of typing", question.newest().order(), "Did you mean 0.52?");
        assertThat(Browsing.as(Cast.SECOND_TECHNICIAN).page("/quality/questions"))
                .doesNotContain(question.newest().order());

        Map<String, Object> form = new HashMap<>(technician.form("/quality/questions"));
        form.put("answer", "RIGHT");
        form.put("words", "");
        assertThat(technician
                        .send("/quality/questions/" + question.id() + "/answer", form)
                        .statusCode())
                .isEqualTo(303);
        assertThat(technician.page("/quality/questions")).contains("You answered:");
    }

    @Test
    void statistics_by_person_are_off_until_agreed_and_off_again_when_ended() {
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        if (agreeing.latest().isPresent()) {
            agreeing.end(new ToEnd(UUID.randomUUID(), "for this test"), actor(Cast.QUALITY_ENGINEER));
        }
        assertThat(agreeing.at(clock.instant())).isEmpty();
        assertThat(keys(agreeing.agree(
                        new ToAgree(UUID.randomUUID(), "", List.of("nobody"), today.plusYears(3)),
                        actor(Cast.QUALITY_ENGINEER))))
                .containsExactlyInAnyOrder("quality.documentMissing", "quality.readerUnknown", "quality.untilWrong");

        agreeing.agree(
                new ToAgree(UUID.randomUUID(), "WA-7", List.of(Cast.QUALITY_ENGINEER.number()), today.plusDays(30)),
                actor(Cast.QUALITY_ENGINEER));
        Agreement agreement = agreeing.at(clock.instant()).orElseThrow();
        assertThat(agreement.lets(Cast.QUALITY_ENGINEER.number())).isTrue();
        assertThat(agreement.lets(Cast.WORKS_ENGINEER.number())).isFalse();
        assertThat(agreeing.at(clock.instant().plusSeconds(40 * 86_400L)))
                .as("it runs out")
                .isEmpty();

        agreeing.end(new ToEnd(UUID.randomUUID(), "the works council asked"), actor(Cast.QUALITY_ENGINEER));
        assertThat(agreeing.at(clock.instant())).isEmpty();
    }

    /** 5.2 read where 0.3 to 0.7 is asked: the point one place on. */
    private Question slipped() {
        OnRecord bus = OnRecord.accepted();
        About about = new About("packs", "OWN-SHEET", 1, "slip", List.of());
        Measured said = new Measured(
                about,
                new Basis(Condition.NONE, Optional.empty(), Optional.empty()),
                new BigDecimal("5.2"),
                "bar",
                Optional.of(Limits.between(new BigDecimal("0.3"), new BigDecimal("0.7"))),
                Optional.empty(),
                Verdict.FAIL);
        Subject vehicle = Subject.workOrder(bus.number());
        Entry entry = ledger.write(
                        new Told(UUID.randomUUID(), List.of(vehicle), Measured.class),
                        actor(Cast.TECHNICIAN),
                        reading -> Decision.say(vehicle, said))
                .fold(written -> written, against -> {
                    throw new IllegalStateException(against.toString());
                });
        return questions.to(Cast.TECHNICIAN.number(), clock.instant()).stream()
                .map(Standing::question)
                .filter(question -> question.newest().entry().equals(entry.id()))
                .findFirst()
                .orElseThrow();
    }

    private List<UUID> to(Cast person) {
        return questions.to(person.number(), clock.instant()).stream()
                .map(one -> one.question().id())
                .toList();
    }

    private List<UUID> withQuality() {
        return questions.withQuality(Cast.QUALITY_ENGINEER.number(), clock.instant()).stream()
                .map(one -> one.question().id())
                .toList();
    }

    private Actor actor(Cast person) {
        return Actor.of(person.number(), clock);
    }

    private static List<String> keys(Outcome<Entry> outcome) {
        return outcome.fold(
                written -> List.of(),
                against -> against.stream().map(Reason::key).toList());
    }
}
