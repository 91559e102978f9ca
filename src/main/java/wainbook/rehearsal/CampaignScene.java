package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.process.Route;
import wainbook.rehearsal.chance.Dice;
import wainbook.trace.Mention;
import wainbook.trace.TracedRow;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Answer;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.Match;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;
import wainbook.trace.campaign.CampaignSaying.Way;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.act.Answering;
import wainbook.trace.campaign.act.Lettering;
import wainbook.trace.campaign.act.Opening;
import wainbook.trace.campaign.act.ReworkOrdering;
import wainbook.trace.campaign.act.Settling;
import wainbook.trace.campaign.act.TakingOut;
import wainbook.works.Role;

/**
 * A campaign that was opened this morning over some lots, in vehicles that were handed over and a few in the works; two operators
 * were written to, one answered. Its dice are its own: nothing else falls otherwise.
 */
final class CampaignScene {

    static final String NUMBER = "FA-0001";

    private static final int FIRST_LOT = 2601;
    private static final int LAST_LOT = 2646;
    private static final int WIDEST = 8;
    private static final int WRITTEN_TO = 2;
    private static final int MANY = 8;
    private static final int FEW = 2;
    private static final Duration BEFORE = Duration.ofMinutes(95);
    private static final Duration BETWEEN = Duration.ofMinutes(7);

    /** A range of lots with the vehicles it is in. */
    private record Lots(int first, int last, Set<String> orders) {}

    private final Playing playing;
    private final Dice dice;
    private Instant now;

    CampaignScene(Playing playing) {
        this.playing = playing;
        this.dice = Dice.of(playing.scenario.seed(), "campaign");
        this.now = playing.present.minus(BEFORE);
    }

    void opened() {
        playing.together(() -> {
            if (playing.acts.campaigns.named(NUMBER).isEmpty()) {
                fitting().ifPresent(this::opened);
            }
        });
    }

    private void opened(Lots lots) {
        LocalDate yesterday = playing.acts.day.of(playing.present).minusDays(1);
        var term = new Term(
                Mention.Sort.LOT,
                "L-" + lots.first() + "-00",
                Optional.of("L-" + lots.last() + "-99"),
                Optional.empty(),
                Optional.of(yesterday));
        done(playing.acts.openingCampaigns.open(
                new Opening.ToOpen(
                        dice.id(),
                        NUMBER,
                        "Sealant that may not cure",
                        "A batch of sealant was mixed with too little hardener. Joints sealed with it may stay soft and let water in.",
                        "We look at every joint sealed with it, clean and seal again what is soft, and measure the insulation. About"
                                + " half a day for each vehicle.",
                        Hazard.AT_NEXT_SERVICE,
                        new Query(Match.ANY, List.of(term))),
                as(Role.QUALITY_ENGINEER)));
        // What is worked on has been written to since this morning: it is held now.
        playing.acts.holds.put(NUMBER, opener());
        letters();
        onTheLine();
    }

    /** Looked at where they stand, so that their holds end and the line of the demonstration goes on. */
    private void onTheLine() {
        campaign().vehicles().values().stream()
                .map(InCampaign::order)
                .filter(order -> playing.acts
                        .campaigns
                        .order(order)
                        .filter(known -> known.phase() == Phase.ON_LINE)
                        .isPresent())
                .forEach(order -> done(playing.acts.settling.settle(
                        new Settling.ToSettle(
                                dice.id(),
                                NUMBER,
                                order,
                                End.NOT_NEEDED,
                                "Every joint with this sealant was pressed by hand at the station: hard and tight",
                                Optional.empty(),
                                Optional.empty()),
                        opener())));
    }

    private Actor opener() {
        return Actor.of(campaign().opened().moment().who(), playing.acts.clock);
    }

    private void letters() {
        List<String> operators = playing.acts.letters.operators(campaign()).stream()
                .limit(WRITTEN_TO)
                .toList();
        for (String operator : operators) {
            LocalDate today = playing.acts.day.of(later());
            done(playing.acts.lettering.send(
                    new Lettering.ToSend(dice.id(), NUMBER, Optional.empty(), operator, today, Way.E_MAIL),
                    as(Role.HANDOVER_CLERK)));
        }
        operators.stream().findFirst().ifPresent(this::answered);
        operators.stream().skip(1).findFirst().ifPresent(this::askedOut);
    }

    private List<String> of(String operator) {
        return campaign().vehicles().values().stream()
                .filter(one -> one.scope().operator().equals(operator)
                        && !one.letters().isEmpty())
                .map(one -> one.order())
                .toList();
    }

    private void answered(String operator) {
        String order = of(operator).get(0);
        LocalDate today = playing.acts.day.of(later());
        done(playing.acts.answering.answer(
                new Answering.ToAnswer(
                        dice.id(), NUMBER, order, Answer.REACHED, today, "Can come on any Tuesday, by its own wheels"),
                as(Role.HANDOVER_CLERK)));
        UUID id = dice.id();
        later();
        Optional<WorkOrder> vehicle = playing.acts.campaigns.order(order);
        vehicle.flatMap(this::back)
                .filter(route -> playing.acts.reworking.known(order).isEmpty())
                .ifPresent(route -> done(playing.acts.reworking.order(
                        new ReworkOrdering.ToOrder(
                                id, NUMBER, order, order + "-2", route.code(), operator, today.plusDays(11)),
                        as(Role.WORKS_ENGINEER))));
    }

    /** The shortest of the routes by which its kind comes back. */
    private Optional<Route> back(WorkOrder vehicle) {
        return playing.acts.comingBack.routes(vehicle).stream()
                .min(Comparator.comparingInt(route -> route.legs().size()));
    }

    private void askedOut(String operator) {
        later();
        done(playing.acts.takingOut.ask(
                new TakingOut.ToAsk(
                        dice.id(),
                        NUMBER,
                        of(operator).get(0),
                        "The tube of this lot was opened and thrown away; the lot was read before that was noticed"),
                as(Role.QUALITY_ENGINEER)));
    }

    /** The range of lots that is in many vehicles handed over and in a few that are here, one of them being worked on. */
    private Optional<Lots> fitting() {
        Map<String, Phase> phases = WorkOrderRow.all().stream()
                .filter(row -> row.number.startsWith(playing.numbers()))
                .collect(Collectors.toMap(row -> row.number, row -> row.phase));
        LocalDate today = playing.acts.day.of(playing.present);
        List<TracedRow> rows = TracedRow.beginning(Mention.Sort.LOT, "L-26").stream()
                .filter(row -> row.shown.matches("L-\\d{4}-\\d{2}") && phases.containsKey(row.workOrder))
                .filter(row -> playing.acts.day.of(row.at).isBefore(today))
                .toList();
        Function<Lots, Long> score = lots -> {
            long here = lots.orders().stream()
                    .filter(order -> phases.get(order) != Phase.HANDED_OVER)
                    .count();
            boolean worked = lots.orders().stream().anyMatch(order -> phases.get(order) == Phase.ON_LINE);
            long gone = lots.orders().size() - here;
            return !worked || gone == 0 ? -MANY : Math.min(MANY, gone) - 2 * Math.max(0, here - FEW);
        };
        return IntStream.rangeClosed(1, WIDEST)
                .boxed()
                .flatMap(width -> IntStream.rangeClosed(FIRST_LOT, LAST_LOT + 1 - width)
                        .mapToObj(first -> lots(rows, first, first + width - 1)))
                .filter(lots -> score.apply(lots) > -MANY)
                .max(Comparator.comparing(score)
                        .thenComparing(lots -> lots.first() - lots.last())
                        .thenComparing(lots -> -lots.first()));
    }

    private static Lots lots(List<TracedRow> rows, int first, int last) {
        return new Lots(
                first,
                last,
                rows.stream()
                        .filter(row -> {
                            int lot = Integer.parseInt(row.shown.substring(2, 6));
                            return first <= lot && lot <= last;
                        })
                        .map(row -> row.workOrder)
                        .collect(Collectors.toSet()));
    }

    private Campaign campaign() {
        return playing.acts.campaigns.named(NUMBER).orElseThrow();
    }

    private Instant later() {
        now = now.plus(BETWEEN);
        return now;
    }

    private Actor as(Role role) {
        String person = playing.crew(playing.at("office")).anyone(role, dice);
        return Actor.of(person, Clock.fixed(now, ZoneOffset.UTC));
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(entry -> entry, reasons -> {
            throw new IllegalStateException("the campaign scene is refused: " + reasons);
        });
    }
}
