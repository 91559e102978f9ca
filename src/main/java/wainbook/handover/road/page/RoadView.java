package wainbook.handover.road.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.handover.Standing;
import wainbook.handover.document.DocumentLine;
import wainbook.handover.road.RoadEvidence;
import wainbook.handover.road.RoadRules;
import wainbook.ledger.Entry;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleaseEnded;
import wainbook.line.road.RoadUse;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * A vehicle's release for the road as its page shows it.
 *
 * @param drivers who may drive it
 * @param doors which acts the reader's roles allow
 * @param usualKm what the odometer showed last
 */
public record RoadView(RoadRules rules, List<Option> drivers, Doors doors, int usualKm, Filled filled) {

    public record Doors(boolean release, boolean log) {}

    /** Where it stands. */
    public enum State {
        RELEASED("roadReleased", "done", "safe"),
        DISTURBED("roadDisturbed", "alert", "danger"),
        ENDED("roadEnded", "fail", "danger"),
        NOT_RELEASED("roadNotYet", "clock", "must"),
        OVER("roadOver", "done", "safe");

        private final String key;
        private final String sign;
        private final String meaning;

        State(String key, String sign, String meaning) {
            this.key = key;
            this.sign = sign;
            this.meaning = meaning;
        }

        public String sign() {
            return sign;
        }

        public String meaning() {
            return meaning;
        }
    }

    public String number() {
        return rules.order().number();
    }

    public RoadUse use() {
        return rules.use();
    }

    public State state() {
        if (handedOver()) {
            return State.OVER;
        }
        if (use().last().isEmpty()) {
            return State.NOT_RELEASED;
        }
        if (use().inForce().isEmpty()) {
            return State.ENDED;
        }
        return rules.mayDrive() ? State.RELEASED : State.DISTURBED;
    }

    public boolean handedOver() {
        return rules.order().phase() == Phase.HANDED_OVER;
    }

    public String word() {
        return Words.of("handover." + state().key);
    }

    public String title() {
        return Words.of("handover.roadTitle", number(), word());
    }

    public boolean released() {
        return state() == State.RELEASED;
    }

    /** The last release while nobody ended it and the vehicle is the works' to drive. */
    public Optional<RoadUse.Release> inForce() {
        return handedOver() ? Optional.empty() : use().inForce();
    }

    public List<Reason> disturbed() {
        return rules.disturbed();
    }

    public List<Reason> against() {
        return rules.against();
    }

    public String fingerprint() {
        return rules.evidence().fingerprint();
    }

    public List<RoadEvidence.Line> evidence() {
        return rules.evidence().lines();
    }

    public String sort(RoadEvidence.Line line) {
        return Words.of("handover.roadSort" + line.sort().key());
    }

    public String status(RoadEvidence.Line line) {
        return line.after() && line.holds() && line.item().passing().isEmpty()
                ? Words.of("handover.roadAfter")
                : Words.of("station.status." + line.item().status());
    }

    public List<DocumentLine> documents() {
        return rules.beforeRoadUse().stream()
                .filter(document -> document.standing() != Standing.NOT_NEEDED)
                .map(document -> new DocumentLine(number(), document, rules.today(), false))
                .toList();
    }

    /** Newest first. */
    public List<RoadUse.Drive> drives() {
        return reversed(use().drives());
    }

    public List<RoadUse.Release> releases() {
        return reversed(use().releases());
    }

    /** How a release ended, in words. */
    public String ended(RoadUse.Release release) {
        return release.ended()
                .map(RoadView::endedBy)
                .orElseGet(() -> Words.of(
                        handedOver()
                                ? "handover.roadUntilHandover"
                                : rules.mayDrive() ? "handover.roadStands" : "handover.roadStandsDisturbed"));
    }

    public List<Option> fitness() {
        return List.of(
                new Option("yes", Words.of("handover.roadFit")), new Option("no", Words.of("handover.roadUnfit")));
    }

    public String temperatures(RoadUse.Drive drive) {
        var said = drive.said();
        return Stream.of(
                        shown("handover.roadPacksAt", said.packsDegC()),
                        shown("handover.roadDriveAt", said.driveDegC()),
                        shown("handover.roadOutsideAt", said.outsideDegC()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    private static Optional<String> shown(String key, Optional<BigDecimal> degC) {
        return degC.map(value -> Words.of(key, value.toPlainString()));
    }

    private static String endedBy(Entry entry) {
        if (entry.saying() instanceof RoadReleaseEnded said) {
            return said.reason().isBlank()
                    ? Words.of("handover.roadWithdrawn")
                    : Words.of("handover.roadWithdrawnFor", said.reason());
        }
        return Words.of(entry.saying() instanceof RoadDriven ? "handover.roadEndedByDrive" : "handover.roadReplaced");
    }

    private static <T> List<T> reversed(List<T> list) {
        var turned = new ArrayList<>(list);
        Collections.reverse(turned);
        return turned;
    }
}
