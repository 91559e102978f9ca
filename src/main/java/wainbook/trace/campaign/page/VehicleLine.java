package wainbook.trace.campaign.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Progress;
import wainbook.trace.campaign.Standing;

/**
 * A vehicle of a campaign.
 *
 * @param phase of its order today
 * @param hold number of the campaign's hold that is on
 */
public record VehicleLine(
        String campaign, InCampaign one, Progress progress, String registration, Phase phase, Optional<Integer> hold) {

    public String order() {
        return one.order();
    }

    public String path() {
        return Campaign.path(campaign) + "/vehicles/" + order();
    }

    public Standing standing() {
        return progress.standing();
    }

    public String phaseWord() {
        return OrderList.word(phase);
    }

    public boolean handedOver() {
        return progress.handedOver();
    }

    /** Whether somebody asked to take it out and nobody has decided. */
    public boolean askedOut() {
        return progress.askedOutBy().isPresent() && standing().open();
    }

    public String because() {
        return one.scope().because().stream()
                .map(NewView::because)
                .distinct()
                .limit(3)
                .collect(Collectors.joining(", "));
    }

    public List<Because> places() {
        return one.scope().because();
    }

    public String placePath(Because place) {
        return PlacePath.of(place);
    }

    public String placeWord(Because place) {
        return NewView.because(place);
    }

    /** How it ended, where it did. */
    public String end() {
        return one.end()
                .map(said -> Words.of("campaign.end." + said.end().name()))
                .orElse("");
    }

    boolean holds(String text) {
        return String.join(
                        " ",
                        order(),
                        registration,
                        one.scope().vin().orElse(""),
                        one.scope().operator())
                .toLowerCase(Words.LOCALE)
                .contains(text.toLowerCase(Words.LOCALE));
    }

    List<String> cells() {
        return List.of(
                order(),
                registration,
                one.scope().vin().orElse(""),
                one.scope().operator(),
                phaseWord(),
                standing().name(),
                String.valueOf(one.letters().size()),
                one.reworkOrder().orElse(""),
                end(),
                because(),
                String.valueOf(one.scope().head()),
                one.scope().hash());
    }
}
