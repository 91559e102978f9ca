package wainbook.rehearsal;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.process.VehicleFacts;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Limits;
import wainbook.quality.reading.Reading;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.vehicle.Answers;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;
import wainbook.station.Reply;

/**
 * Vehicles of the demo works as the rehearsal's value generator measures them, without a database: every sheet of every kind,
 * every joint and reading; now and then one that failed and was put right. Six people share the work, each with tools of
 * their own; one vehicle follows another, so that nobody is at two.
 */
public final class CleanVehicles {

    private static final Instant FIRST = Instant.parse("2026-01-05T06:00:00Z");
    private static final Duration BETWEEN_VEHICLES = Duration.ofHours(14);
    private static final int PEOPLE = 6;

    /** How often a reading fails before it is put right. */
    private static final double FAILS = 0.01;

    private final WorksFiles works;
    private final Map<String, Joint> joints = new HashMap<>();
    private final long seed;

    public CleanVehicles(long seed) {
        this.seed = seed;
        this.works = WorksFolder.read(Path.of("demo-fleet"), VehicleFacts.PREDICATES)
                .fold(files -> files, faults -> {
                    throw new IllegalStateException(faults.toString());
                });
        works.joints().forEach(joint -> joints.put(joint.code(), joint));
    }

    public List<Reading> all(int vehicles) {
        return all(vehicles, (vehicle, entry) -> entry);
    }

    /** Lets each entry of a vehicle be changed as it is made. */
    public interface Hand {
        List<Reading> write(int vehicle, List<Reading> entry);
    }

    public List<Reading> all(int vehicles, Hand hand) {
        List<String> kinds = works.sheets().stream()
                .map(sheet -> sheet.code().replaceFirst(".*-", ""))
                .filter(kind -> kind.matches("[A-Z]+[0-9]+"))
                .distinct()
                .sorted()
                .toList();
        var readings = new ArrayList<Reading>();
        for (int vehicle = 0; vehicle < vehicles; vehicle++) {
            readings.addAll(one(vehicle, kinds.get(vehicle % kinds.size()), hand));
        }
        return readings;
    }

    private List<Reading> one(int vehicle, String kind, Hand hand) {
        Dice dice = Dice.of(seed, "clean", vehicle);
        var answers = new Answers(dice, "ZZ", item -> Optional.empty(), Optional.empty(), file -> "");
        var readings = new ArrayList<Reading>();
        Instant at = FIRST.plus(BETWEEN_VEHICLES.multipliedBy(vehicle));
        long number = 0;
        List<CheckSheet> sheets = works.sheets().stream()
                .filter(sheet -> sheet.code().endsWith("-" + kind))
                .toList();
        for (int stage = 0; stage < sheets.size(); stage++) {
            CheckSheet sheet = sheets.get(stage);
            for (CheckItem item : sheet.items()) {
                Optional<Joint> joint = item.joint().map(joints::get);
                List<Reply> replies = new ArrayList<>();
                if (dice.falls(FAILS)) {
                    answers.bad(item.asks(), joint).ifPresent(replies::add);
                }
                replies.add(answers.good(sheet.code() + "/" + item.key(), item.asks(), joint));
                for (Reply reply : replies) {
                    number++;
                    at = at.plusSeconds(dice.between(90, 400));
                    var made = new Entry(vehicle, kind, number, at, sheet.stage(), stage, dice.id());
                    readings.addAll(hand.write(vehicle, made.readings(item, joint, reply)));
                }
            }
        }
        return readings;
    }

    private record Entry(int vehicle, String kind, long number, Instant at, String stage, int place, UUID id) {

        List<Reading> readings(CheckItem item, Optional<Joint> joint, Reply reply) {
            if (item.asks() instanceof Ask.Measure measure) {
                return List.of(reading(
                        item,
                        joint,
                        0,
                        0,
                        measure.unit(),
                        reply.reading().orElseThrow(),
                        measure.works().or(measure::legal)));
            }
            var readings = new ArrayList<Reading>();
            if (item.asks() instanceof Ask.Table table) {
                for (int i = 0; i < reply.cells().size(); i++) {
                    Ask.Table.Column column =
                            table.columns().get(i % table.columns().size());
                    readings.add(reading(
                            item,
                            joint,
                            i + 1,
                            i % table.columns().size() + 1,
                            column.unit(),
                            reply.cells().get(i),
                            column.works().or(column::legal)));
                }
            } else if (item.asks() instanceof Ask.Tighten) {
                var window = joint.orElseThrow().torque().limitsNm();
                for (int i = 0; i < reply.boltsNm().size(); i++) {
                    readings.add(reading(
                            item,
                            joint,
                            i + 1,
                            0,
                            "N·m",
                            reply.boltsNm().get(i),
                            Optional.of(Limits.between(window.lower(), window.upper()))));
                }
            }
            return readings;
        }

        private Reading reading(
                CheckItem item,
                Optional<Joint> joint,
                int bolt,
                int column,
                String unit,
                BigDecimal value,
                Optional<Limits> limits) {
            Optional<Joint> tightened = joint.filter(known -> item.asks() instanceof Ask.Tighten);
            String person = "W-" + ((vehicle + place) % PEOPLE);
            return new Reading(
                    id,
                    number,
                    "WB-" + vehicle,
                    kind,
                    at,
                    Optional.of(at.minusSeconds(1)),
                    person,
                    Optional.of("S-" + stage),
                    tightened.map(known -> known.toolKind() + " of " + person),
                    stage,
                    item.key(),
                    column,
                    tightened.map(Joint::code),
                    bolt,
                    unit,
                    value,
                    tightened.map(known -> known.torque().targetNm()),
                    limits.flatMap(Limits::lower),
                    limits.flatMap(Limits::upper),
                    limits.map(known -> !known.admits(value)).orElse(false),
                    false);
        }
    }
}
