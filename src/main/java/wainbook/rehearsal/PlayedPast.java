package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import wainbook.order.WorkOrder.Phase;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.scenario.Certificates;
import wainbook.rehearsal.time.Timetable;
import wainbook.works.Role;

/** The past that is played: what the works looked back on when the demonstration begins. */
final class PlayedPast {

    private static final int SOME_PAPERS_FOLLOW = 6;

    private final Playing playing;

    PlayedPast(Playing playing) {
        this.playing = playing;
    }

    /** When the first of so many vehicles is ordered: before that, the works is set up. */
    static Instant beforeAll(Timetable times, int steps, int handedOver) {
        return times.start(-(steps + Playing.WAITING_FOR_PAPERS + handedOver) - Playing.ORDERED_BEFORE)
                .minus(Duration.ofDays(1));
    }

    /** Old certificates of tools, put on record on the day before the first vehicle. */
    void certificates(int handedOver) {
        Instant before = beforeAll(playing.times, playing.steps(), handedOver).plus(Duration.ofHours(1));
        playing.together(() -> {
            String engineer = playing.crew(playing.at("office"))
                    .anyone(Role.QUALITY_ENGINEER, Dice.of(playing.scenario.seed(), "certificates"));
            new Certificates(playing.acts, playing.scenario.certificates(), playing.scenario.seed(), engineer)
                    .puttingOnRecord(Clock.fixed(before, ZoneOffset.UTC));
        });
    }

    /** A vehicle that was handed over; 1 is the latest. */
    void vehicle(int number) {
        int entry = -playing.steps() - Playing.WAITING_FOR_PAPERS - number;
        playing.whole(entry, () -> {
            playing.finished(entry);
            playing.leg(entry, "appointments", way -> way.appointments(), order -> order.phase() == Phase.FINISHED);
            if (number == 1) {
                playing.leg(entry, "issued", way -> way.issued(), order -> order.phase() == Phase.FINISHED);
            }
            if (number <= SOME_PAPERS_FOLLOW) {
                playing.leg(
                        entry,
                        "papers",
                        way -> way.neededDocuments(playing.papersCome(entry)),
                        order -> order.phase() == Phase.FINISHED);
            } else {
                playing.papers(entry, 1);
            }
            playing.leg(entry, "handover", way -> way.handedOver(), order -> order.phase() == Phase.FINISHED);
        });
    }
}
