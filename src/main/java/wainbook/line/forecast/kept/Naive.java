package wainbook.line.forecast.kept;

import java.time.Instant;
import java.util.List;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;

/** What would be said without a model of the line: the plain rules that a forecast has to beat. */
record Naive(TheLineNow line) {

    private static final double MEDIAN = 0.5;

    /** The median times of the stages before it, one after another; nobody stands in anybody's way. */
    Instant byStages(OnHand vehicle) {
        int here = first(vehicle);
        double minutes = 0;
        for (int i = here; i < line.posts().size(); i++) {
            String stage = line.posts().get(i).stage();
            Integer planned = vehicle.plannedMinutes().get(stage);
            if (planned != null) {
                double work = line.past()
                        .work(vehicle.kind(), stage, planned)
                        .minutes()
                        .at(MEDIAN);
                double wait = line.past().signature(stage).at(MEDIAN);
                minutes += i == here ? left(vehicle, work, wait) : work + wait;
            }
        }
        return line.calendar().worked(minutes, stations());
    }

    /** A takt for each station before it, and one for each vehicle that comes onto the line before it. */
    Instant byTakt(OnHand vehicle, int takt) {
        int here = first(vehicle);
        double minutes = takt * (double) ahead(vehicle);
        for (int i = here; i < line.posts().size(); i++) {
            TheLineNow.Post post = line.posts().get(i);
            if (vehicle.plannedMinutes().containsKey(post.stage())) {
                double whole = takt * (double) post.stations().size();
                minutes += i == here ? left(vehicle, whole, 0) : whole;
            }
        }
        return line.calendar().worked(minutes, stations());
    }

    private List<String> stations() {
        return line.posts().stream().flatMap(post -> post.stations().stream()).toList();
    }

    private static double left(OnHand vehicle, double work, double wait) {
        return switch (vehicle.doing()) {
            case AFTER, SIGNED -> 0;
            case UNSIGNED -> Math.max(0, wait - vehicle.minutes());
            case WORK -> Math.max(0, work - vehicle.minutes()) + wait;
            case BAY, ACCEPTED, SURVEY, ORDERED -> work + wait;
        };
    }

    private int first(OnHand vehicle) {
        List<String> stages = line.posts().stream().map(TheLineNow.Post::stage).toList();
        return vehicle.doing().inFront()
                ? 0
                : vehicle.stage()
                        .map(stages::indexOf)
                        .map(at -> Math.max(0, at))
                        .orElse(0);
    }

    private long ahead(OnHand vehicle) {
        return vehicle.doing().inFront()
                ? line.vehicles().stream()
                        .takeWhile(one -> !one.order().equals(vehicle.order()))
                        .filter(one -> one.doing().inFront())
                        .count()
                : 0;
    }
}
