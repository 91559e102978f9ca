package wainbook.trace.campaign.page;

import wainbook.ledger.Subject;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.waste.Labels;

/** Where the entry can be read that brought a vehicle into scope. */
final class PlacePath {

    private PlacePath() {}

    static String of(Because place) {
        Subject stream = Subject.parse(place.stream());
        return stream.sort() == Subject.Sort.CONTAINER
                ? Labels.path(stream.code())
                : "/orders/" + stream.code() + "#entry-" + place.entry();
    }
}
