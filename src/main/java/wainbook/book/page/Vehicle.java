package wainbook.book.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import wainbook.book.VehicleRecord;
import wainbook.gate.Gate;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.promise.PromiseKept;
import wainbook.handover.record.page.SnagLine;
import wainbook.isolation.page.InWords;
import wainbook.line.Standing;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.station.StationState;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.order.FactQuestion;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldInWords;
import wainbook.page.Formats;
import wainbook.page.RouteBar;
import wainbook.page.Words;
import wainbook.permit.page.PermitLine;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.station.help.HelpCall;
import wainbook.trace.campaign.Campaign;

/**
 * The whole of one vehicle as its page shows it.
 *
 * @param power how it stands electrically, for the reader
 * @param permits open ones, besides those on high voltage
 * @param given to whom and when it was handed over, in a sentence
 * @param warranty as the handover record states it
 */
public record Vehicle(
        WorkOrder order,
        RouteBar bar,
        Optional<Standing> standing,
        InWords power,
        Matters matters,
        List<FactQuestion> facts,
        List<FactQuestion> missing,
        List<Fitted> fitted,
        List<GateLine> gates,
        List<InsulationTrend> insulation,
        Optional<DocumentSet> documents,
        List<PromiseKept> promises,
        VehicleRecord record,
        Optional<String> given,
        Optional<Warranty> warranty,
        List<PermitLine> permits,
        Doors doors) {

    /**
     * What is open, oldest first.
     *
     * @param byRule holds that no entry of its own record puts on
     * @param former what is open still under its former orders
     */
    public record Matters(
            List<Nonconformity> nonconformities,
            List<HoldInWords> holds,
            List<Deferred> deferred,
            List<Awaited> awaited,
            List<HelpCall> calls,
            List<VehicleDoubt> doubts,
            List<SnagLine> snags,
            List<Campaign> campaigns,
            List<HoldByRule> byRule,
            List<FromFormer> former) {
        public boolean none() {
            return nonconformities.isEmpty()
                    && holds.isEmpty()
                    && deferred.isEmpty()
                    && awaited.isEmpty()
                    && calls.isEmpty()
                    && doubts.isEmpty()
                    && snags.isEmpty()
                    && campaigns.isEmpty()
                    && byRule.isEmpty()
                    && former.isEmpty();
        }

        /** Those that are not shown with what is open from a former record. */
        public List<HoldByRule> byRuleHere() {
            return byRule.stream().filter(hold -> hold.former().isEmpty()).toList();
        }
    }

    /** From when the works answers for its conversion. */
    public record Warranty(String from, int odometerKm, String covers) {}

    /** Work that was given to a later stage and is not done yet. */
    public record Deferred(String item, String toStage, String text, long entry) {}

    /** A part that is missing for a stage. */
    public record Awaited(AwaitedPart part, String stage, String sentence, boolean late) {

        public String sign() {
            return late ? "alert" : "clock";
        }

        public String meaning() {
            return late ? "danger" : "warn";
        }
    }

    /**
     * A part on the vehicle, by its serial or lot.
     *
     * @param brought whether the vehicle came back with it
     */
    public record Fitted(String part, String number, boolean serial, boolean brought, long entry) {

        /** The form that records it as off the vehicle. */
        public String off(String order) {
            return "/orders/" + order + "/parts/off?part=" + encoded(part) + "&serial=" + encoded(number);
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }
    }

    /** A gate of the route; without a standing where the vehicle has not been. */
    public record GateLine(String stage, String title, Optional<Gate> gate, Optional<String> signer) {

        public String standing() {
            return gate.map(known -> Words.of("book.gate." + known.standing().name()))
                    .orElseGet(() -> Words.of("book.gateToCome"));
        }

        public String sign() {
            return gate.map(known -> switch (known.standing()) {
                        case SIGNED -> "done";
                        case CHANGED_SINCE_SIGNED, REFUSED -> "alert";
                        case UNSIGNED -> "clock";
                    })
                    .orElse("next");
        }

        public String meaning() {
            return gate.map(known -> switch (known.standing()) {
                        case SIGNED -> "safe";
                        case CHANGED_SINCE_SIGNED -> "warn";
                        case REFUSED -> "danger";
                        case UNSIGNED -> "quiet";
                    })
                    .orElse("quiet");
        }
    }

    /** Which acts the reader's roles allow; the forms themselves ask the rules again. */
    public record Doors(
            boolean donor,
            boolean move,
            boolean hold,
            boolean report,
            boolean decide,
            boolean release,
            boolean state,
            boolean rebind,
            boolean await,
            boolean prove,
            boolean comeBack,
            boolean takeOff) {}

    /** Where it stands, by its code. */
    public String place() {
        return order.at().map(at -> at.place()).orElse("");
    }

    public String path() {
        return "/orders/" + order.number();
    }

    public String phase() {
        return OrderList.word(order.phase());
    }

    public String promised() {
        return Formats.date(order.ordered().promisedOn());
    }

    /** How far the documents are, in a sentence. */
    public String documentsInWords() {
        return documents
                .map(set -> Words.of(
                        "book.documentsCount",
                        set.settled().size(),
                        set.barring().size(),
                        set.asking().size()))
                .orElseGet(() -> Words.of("book.documentsNoRules"));
    }

    /** Documents still owed for a vehicle that is gone. */
    public int toFollow() {
        return given.isPresent() ? documents.map(set -> set.following().size()).orElse(0) : 0;
    }

    /** Before its donor came there is nothing that could be live. */
    public boolean here() {
        return order.at().isPresent();
    }

    /** A donor that was rejected never comes onto the line. */
    public boolean hasWay() {
        return order.phase() != WorkOrder.Phase.DONOR_REJECTED;
    }

    public String awaited() {
        return AwaitedPart.path(order.number());
    }

    public String overTime() {
        return "/line/over-time/" + order.number();
    }

    /** Sources of voltage that the work brought aboard. */
    public String aboard() {
        return String.join(", ", power.isolation().aboard());
    }

    /** Whether the vehicle may be ordered back. */
    public boolean gone() {
        return given.isPresent() && order.links().onward().isEmpty();
    }

    public boolean awaitsDonor() {
        return order.phase() == WorkOrder.Phase.ORDERED;
    }

    /** Where it stands, in one sentence. */
    public String sentence() {
        return given.or(() -> standing.map(known -> Words.of(
                        "book.stands",
                        known.order().at().map(at -> at.place()).orElse("–"),
                        known.state() == StationState.OVER_TAKT
                                ? Words.of("line.stateOver", known.over())
                                : known.state().word(),
                        known.time())))
                .orElseGet(() -> order.at()
                        .map(at -> Words.of("book.rests", phase(), at.place()))
                        .orElseGet(() -> Words.of("book.restsNowhere", phase())));
    }
}
