package wainbook.trace.campaign;

import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/** What stands against a step for one vehicle. Plain, so that every case can be tried. */
public final class StepRule {

    private StepRule() {}

    /**
     * @param open whether the campaign is
     * @param progress absent where the vehicle never was in scope
     * @param who asks
     */
    public static List<Reason> against(
            Step step, boolean open, String campaign, String order, Optional<Progress> progress, String who) {
        if (!open) {
            return List.of(Reason.of("campaign.closedAlready", Reason.WORKS_RULE, campaign)
                    .liftedAt(Campaign.path(campaign) + "#reopen"));
        }
        if (progress.isEmpty()) {
            return step == Step.ADD
                    ? List.of()
                    : List.of(Reason.of("campaign.notInScope", Reason.WORKS_RULE, order, campaign));
        }
        return key(step, progress.get(), who).stream()
                .map(key -> new Reason(key, List.of(order, campaign), Reason.WORKS_RULE, Optional.empty()))
                .toList();
    }

    private static Optional<String> key(Step step, Progress progress, String who) {
        Standing standing = progress.standing();
        if (step == Step.ADD) {
            return standing == Standing.TAKEN_OUT || standing == Standing.SETTLED
                    ? Optional.empty()
                    : Optional.of("campaign.inScopeAlready");
        }
        if (!standing.open()) {
            return Optional.of("campaign.vehicleOver");
        }
        return switch (step) {
            case ADD -> Optional.empty();
            case ASK_OUT -> when(progress.askedOutBy().isPresent(), "campaign.askedOutAlready");
            case AGREE_OUT ->
                progress.askedOutBy()
                        .map(asker -> when(asker.equals(who), "campaign.ownTakingOut"))
                        .orElse(Optional.of("campaign.nobodyAskedOut"));
            case KEEP_IN -> when(progress.askedOutBy().isEmpty(), "campaign.nobodyAskedOut");
            case SEND_LETTER -> when(!progress.handedOver(), "campaign.stillHere");
            case ANSWER ->
                progress.handedOver()
                        ? when(!progress.letter(), "campaign.noLetterYet")
                        : Optional.of("campaign.stillHere");
            case ORDER_REWORK ->
                progress.handedOver()
                        ? when(!progress.rework().over(), "campaign.reworkOrderedAlready")
                        : Optional.of("campaign.stillHere");
            case SETTLE -> when(progress.rework() == Rework.IN_WORKS, "campaign.backInWorks");
        };
    }

    private static Optional<String> when(boolean stands, String key) {
        return stands ? Optional.of(key) : Optional.empty();
    }
}
