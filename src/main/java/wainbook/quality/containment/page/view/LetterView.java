package wainbook.quality.containment.page.view;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.quality.containment.Containment;

/**
 * A letter to the operator of a vehicle handed over. It names no person: neither who measured nor who decides.
 *
 * @param works the works' title
 */
public record LetterView(Containment containment, VehicleView vehicle, String works, Instant today) {

    /** What is in doubt, one line for every item with the number of its readings. */
    public record Line(String title, String gravity, int readings, int sureOut, String limits) {}

    public List<Line> lines() {
        Map<String, List<ReadingView>> byItem = new LinkedHashMap<>();
        vehicle.doubtful()
                .forEach(one -> byItem.computeIfAbsent(one.title(), key -> new java.util.ArrayList<>())
                        .add(one));
        return byItem.entrySet().stream()
                .map(item -> new Line(
                        item.getKey(),
                        item.getValue().get(0).gravity(),
                        item.getValue().size(),
                        (int) item.getValue().stream()
                                .filter(one -> one.said().verdict() == wainbook.quality.QualitySaying.Sureness.SURE_OUT)
                                .count(),
                        item.getValue().get(0).limits() + " "
                                + item.getValue().get(0).said().unit()))
                .toList();
    }

    /** What turned out wrong, without saying of whom. */
    public String what() {
        return wainbook.page.Words.of(
                "quality.letterWhat." + containment.about().sort().name());
    }

    public boolean grave() {
        return vehicle.doubt().gravest().grave();
    }

    public String reference() {
        return containment.code() + "/" + vehicle.number();
    }
}
