package wainbook.engineering.flow.forecast;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.model.Appointment;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pulses;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/**
 * The line laid out flat, so that ten thousand replications need not ask records. A visit is at vehicle · stages + stage.
 *
 * <p>Replications run in <em>open minutes</em>: minutes in which anybody on the line works. Where all keep one calendar the nights are
 * gone and work is a sum; a stage with hours or down time of its own has intervals in open minutes.
 */
final class Plan {

    final int stages;
    final int vehicles;
    final WorkingTime lineTime;
    final WorkingTime open;
    /** In open minutes. */
    final Pulses pulses;

    final boolean paced;

    /** Pulses for which a vehicle stays at a stage. */
    private final int[] stays;

    final int[] pulsesStood;

    final long[] stageKey;
    final int[] stations;
    /** Vehicles that may be at a stage or on a place in front of it. */
    final int[] room;

    /** Whether there is a place in front of the stage. */
    final boolean[] places;

    final double[] transport;
    /** In open minutes, as {@link #signing}. */
    final WorkingTime[] working;

    final WorkingTime[] signing;
    /** The first interval of each, which holds all or most of what is asked. */
    final double[] workingFrom;

    final double[] workingTo;
    final double[] signingFrom;
    final double[] signingTo;
    final Tables signature;
    final boolean[] signedAtOnce;
    final double[] refusal;
    final Tables again;

    final Tables work;
    final double[] curing;
    /** In open minutes. */
    final double[] notBefore;

    final double[] curedAt;

    final boolean[] passing;
    final boolean[] plain;

    final Start[] starts;
    final Luck[] luck;
    final boolean[] somebodyComesBack;
    final List<Appointment> appointments;
    final long[] appointmentKey;

    Plan(Line line) {
        stages = line.stages().size();
        vehicles = line.vehicles().size();
        lineTime = line.working();
        open = line.stages().stream()
                .flatMap(stage -> Stream.of(stage.working(), stage.signing()))
                .distinct()
                .reduce(lineTime, WorkingTime::and);
        paced = !line.pulses().isNone();
        pulses = Pulses.at(
                Arrays.stream(line.pulses().minutes()).map(this::opened).toArray(),
                line.pulses().earlyMinutes());
        stageKey = new long[stages];
        stations = new int[stages];
        stays = line.stages().stream().mapToInt(Stage::pulses).toArray();
        room = new int[stages];
        places = new boolean[stages];
        transport = new double[stages];
        working = new WorkingTime[stages];
        signing = new WorkingTime[stages];
        workingFrom = new double[stages];
        workingTo = new double[stages];
        signingFrom = new double[stages];
        signingTo = new double[stages];
        signature = new Tables(line.stages().stream().map(Stage::signature).toList());
        signedAtOnce = new boolean[stages];
        refusal = new double[stages];
        again = new Tables(line.stages().stream().map(Stage::again).toList());
        work = new Tables(line.vehicles().stream()
                .flatMap(vehicle -> vehicle.visits().stream())
                .map(Visit::work)
                .toList());
        curing = new double[vehicles * stages];
        notBefore = new double[vehicles * stages];
        curedAt = new double[vehicles * stages];
        passing = new boolean[vehicles * stages];
        plain = new boolean[vehicles * stages];
        starts = new Start[vehicles];
        pulsesStood = line.vehicles().stream().mapToInt(Vehicle::pulsesStood).toArray();
        luck = new Luck[vehicles];
        somebodyComesBack = new boolean[stages];
        appointments = line.appointments();
        appointmentKey = appointments.stream().mapToLong(one -> key(one.name())).toArray();
        for (int stage = 0; stage < stages; stage++) {
            lay(stage, line.stages());
        }
        for (int vehicle = 0; vehicle < vehicles; vehicle++) {
            lay(vehicle, line.vehicles().get(vehicle));
        }
    }

    /** FNV-1a: the same name, the same numbers, in every forecast and on every machine. */
    static long key(String name) {
        long hash = 0xcbf29ce484222325L;
        for (byte one : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (one & 0xff)) * 0x100000001b3L;
        }
        return hash;
    }

    /** Clock to open minutes. What happens while nobody works is a hair after the last of them, so that it is not found before. */
    double opened(double minute) {
        double worked = open.worked(minute);
        return open.next(minute) > minute && minute > Double.NEGATIVE_INFINITY ? Math.nextUp(worked) : worked;
    }

    /** Open to clock minutes, of something that ends or is left. */
    double minute(double opened) {
        return open.reached(opened);
    }

    /** Open to clock minutes, of something that begins. */
    double beginning(double opened) {
        return open.resumed(opened);
    }

    /** Until when a vehicle that came to a stage stays there in any case. */
    double stays(int visit, int stage, double came) {
        return stage == stages - 1 || passing[visit] ? came : pulses.after(came, stays[stage]);
    }

    /** The same for a vehicle that is there at minute 0. */
    double stays(int vehicle, int stage) {
        int left = stays[stage] - pulsesStood[vehicle];
        return !paced || stage == stages - 1 || left < 1 ? 0 : pulses.after(-pulses.earlyMinutes(), left);
    }

    private void lay(int at, List<Stage> all) {
        Stage stage = all.get(at);
        stageKey[at] = key(stage.name());
        stations[at] = stage.stations();
        room[at] = stage.stations() + (at == 0 ? 0 : all.get(at - 1).placesAfter());
        places[at] = room[at] > stations[at];
        transport[at] = stage.transportMinutes();
        working[at] = stage.working().within(open);
        signing[at] = stage.signing().within(open);
        workingFrom[at] = working[at].next(Double.NEGATIVE_INFINITY);
        workingTo[at] = end(working[at]);
        signingFrom[at] = signing[at].next(Double.NEGATIVE_INFINITY);
        signingTo[at] = end(signing[at]);
        signedAtOnce[at] = stage.signature().equals(Minutes.NONE);
        refusal[at] = stage.refusal();
    }

    private static double end(WorkingTime time) {
        return time.intervals().isEmpty()
                ? Double.NEGATIVE_INFINITY
                : time.intervals().get(0).toMinute();
    }

    private void lay(int at, Vehicle vehicle) {
        for (int stage = 0; stage < stages; stage++) {
            Visit visit = vehicle.visits().get(stage);
            int here = at * stages + stage;
            curing[here] = visit.curingMinutes();
            notBefore[here] = opened(visit.notBeforeMinute());
            curedAt[here] = opened(visit.curedMinute());
            passing[here] = visit.passing();
            plain[here] = visit.plain();
        }
        Start start = Start.of(vehicle.whereabouts());
        starts[at] = start;
        luck[at] = Luck.of(vehicle, start);
        if (start.comesBack()) {
            somebodyComesBack[start.stage()] = true;
        }
    }
}
