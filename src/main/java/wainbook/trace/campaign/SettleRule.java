package wainbook.trace.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.trace.campaign.CampaignSaying.End;

/** What a vehicle's end must be shown by. */
public final class SettleRule {

    private SettleRule() {}

    /**
     * @param head number of the vehicle's last entry when it came into scope: what was done before that put nothing right
     * @param last number of its last entry now
     * @param letter whether its operator was written to
     */
    public static List<Reason> against(
            End end, Optional<Long> entry, boolean file, long head, long last, boolean letter) {
        var against = new ArrayList<Reason>();
        if (entry.filter(number -> number <= head || number > last).isPresent()) {
            against.add(Reason.of("campaign.entryUnfit", Reason.WORKS_RULE, head + 1, last)
                    .liftedAt("#entry"));
        }
        boolean shown = switch (end) {
            case PUT_RIGHT_HERE -> entry.isPresent();
            case PUT_RIGHT_BY_OPERATOR, SCRAPPED -> file || entry.isPresent();
            case OUT_OF_REACH -> file || letter;
            case NOT_NEEDED -> true;
        };
        if (!shown) {
            against.add(new Reason(
                    "campaign.unshown" + end.name().replace("_", ""),
                    List.of(),
                    Reason.WORKS_RULE,
                    Optional.of(end == End.PUT_RIGHT_HERE ? "#entry" : "#file")));
        }
        return against;
    }
}
