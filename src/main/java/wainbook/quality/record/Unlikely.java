package wainbook.quality.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.quality.reading.Reading;
import wainbook.quality.record.made.Made;
import wainbook.quality.record.made.Usual;
import wainbook.quality.record.sign.BackDated;
import wainbook.quality.record.sign.Batch;
import wainbook.quality.record.sign.Copied;
import wainbook.quality.record.sign.SameValue;
import wainbook.quality.record.sign.Slip;
import wainbook.quality.record.sign.TargetTyped;
import wainbook.quality.record.sign.TooFast;
import wainbook.quality.record.sign.TwoPlaces;

/**
 * All rules over the record, entry by entry in the order of time. Each entry is judged by what was recorded before it alone,
 * so a question stays as it was first asked; each day's statistics are tested together when the day is over.
 */
public final class Unlikely {

    /** The share of clean vehicles below which questions are kept, over all rules together. */
    public static final double STATED_FALSE_ALARMS = 0.01;

    /** How seldom by chance what one entry shows must come, to be asked about. */
    private static final double RARELY = 3e-5;

    /** What share of a night's findings may be chance. */
    private static final double NIGHT = 1e-3;

    private record Whose(String person, String instrument, YearMonth month) {}

    private final ZoneId zone;
    private final boolean byPerson;
    private final Usual usual = new Usual();
    private final Copied copied = new Copied();
    private final Batch batch = new Batch();
    private final TwoPlaces twoPlaces = new TwoPlaces();
    private final Map<String, Made> before = new HashMap<>();
    private final Map<Whose, Group> groups = new LinkedHashMap<>();
    private final Set<Group> touched = new LinkedHashSet<>();
    private final Set<Object> asked = new HashSet<>();
    private final List<Question> questions = new ArrayList<>();

    private Unlikely(ZoneId zone, boolean byPerson) {
        this.zone = zone;
        this.byPerson = byPerson;
    }

    /**
     * Everything there is to ask about, oldest first.
     *
     * @param inTime every reading, voided ones too
     * @param byPerson whether the works has agreed to statistics by person
     * @param now days that are over by then have been tested
     */
    public static List<Question> over(List<Reading> inTime, ZoneId zone, boolean byPerson, Instant now) {
        var unlikely = new Unlikely(zone, byPerson);
        LocalDate today = null;
        for (Made made : Made.of(inTime)) {
            LocalDate day = LocalDate.ofInstant(made.at(), zone);
            if (today != null && day.isAfter(today)) {
                unlikely.night();
            }
            today = day;
            unlikely.look(made);
        }
        if (today != null && LocalDate.ofInstant(now, zone).isAfter(today)) {
            unlikely.night();
        }
        return List.copyOf(unlikely.questions);
    }

    private void look(Made made) {
        Optional<Made> former = Optional.ofNullable(before.put(made.person(), made));
        Stream.of(
                        SameValue.in(made, usual, RARELY),
                        TargetTyped.in(made, usual, RARELY),
                        Slip.in(made),
                        copied.in(made, usual, RARELY),
                        TooFast.in(made, former),
                        batch.in(made, former),
                        BackDated.in(made),
                        twoPlaces.in(made))
                .flatMap(Optional::stream)
                .forEach(questions::add);
        if (byPerson) {
            made.readings().stream()
                    .filter(reading -> !reading.failed())
                    .forEach(reading -> usual.of(reading).ifPresent(spread -> {
                        Group group = groups.computeIfAbsent(
                                new Whose(
                                        made.person(),
                                        made.instrument().orElse("–"),
                                        YearMonth.from(made.at().atZone(zone))),
                                whose -> new Group(whose.person(), whose.instrument(), whose.month()));
                        group.add(reading, spread);
                        touched.add(group);
                    }));
        }
        usual.add(made);
    }

    private void night() {
        List<Question> tests =
                touched.stream().flatMap(group -> group.tested().stream()).toList();
        FalseDiscoveries.standing(tests, NIGHT).stream()
                .filter(question -> asked.add(question.id()))
                .forEach(questions::add);
        touched.clear();
    }
}
