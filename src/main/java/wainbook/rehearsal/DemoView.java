package wainbook.rehearsal;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Refusal;
import wainbook.page.Words;
import wainbook.works.shift.Shifts;

/**
 * What the page of the demonstration shows.
 *
 * @param may whether whoever looks may begin and stop a play
 * @param against why none can be begun
 * @param shift that would be played
 * @param last play, running or over
 */
record DemoView(
        Filled filled,
        boolean may,
        List<Reason> against,
        Optional<Shifts.Span> shift,
        Optional<ShiftPlay.Play> last,
        Formats formats) {

    /** A play in words. */
    record Played(ShiftPlay.Play play, Formats formats) {

        public String title() {
            return Words.of(
                    "rehearsal.end." + play.end().name(),
                    play.shift().title(),
                    formats.moment(play.time().now()),
                    formats.clock(play.shift().to()));
        }

        public String clock() {
            return formats.clock(play.time().now());
        }

        /** How much of it is over, in hundredths. */
        public long hundredths() {
            double whole = Duration.between(play.from(), play.shift().to()).toMillis();
            double over = Duration.between(play.from(), play.time().now()).toMillis();
            return Math.round(100 * Math.min(1, over / Math.max(1, whole)));
        }

        public int moves() {
            return play.tally().moves();
        }

        public int signatures() {
            return play.tally().signatures();
        }

        public int leftOut() {
            return play.tally().leftOutInAll();
        }

        public List<Left> left() {
            return play.tally().leftOut().stream()
                    .map(one -> new Left(formats.clock(one.at()), one.place(), words(one)))
                    .toList();
        }

        private String words(Tally.LeftOut one) {
            return one.reasons().stream()
                    .map(reason -> Refusal.of(reason, formats))
                    .map(refusal -> (refusal.what() + " " + refusal.why()).strip())
                    .reduce((former, latter) -> former + " " + latter)
                    .orElse(Words.of("rehearsal.nobodyThere"));
        }
    }

    /** Something that was left out. */
    record Left(String at, String place, String why) {}

    static Optional<Speed> speed(String name) {
        return Arrays.stream(Speed.values())
                .filter(speed -> speed.name().equals(name))
                .findFirst();
    }

    public boolean running() {
        return last.filter(play -> play.end() == ShiftPlay.End.RUNNING).isPresent();
    }

    public Optional<Played> played() {
        return last.map(play -> new Played(play, formats));
    }

    public String title() {
        return running() ? Words.of("rehearsal.demoRuns") : Words.of("rehearsal.demo");
    }

    public String next() {
        return shift.map(span ->
                        Words.of("rehearsal.next", span.title(), formats.moment(span.from()), formats.clock(span.to())))
                .orElse("");
    }

    public List<Option> speeds() {
        return Arrays.stream(Speed.values())
                .map(speed -> new Option(speed.name(), Words.of("rehearsal.speed", speed.minutes())))
                .toList();
    }
}
