package wainbook.trace.campaign.page;

import java.util.List;
import java.util.Objects;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignRow;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.Standing;

/** A campaign in the list, with how its vehicles stand. */
public record CampaignLine(CampaignRow row, List<Standing> standings) {

    public CampaignLine {
        standings = List.copyOf(standings);
    }

    /** Those that were taken out do not count. */
    public long vehicles() {
        return standings.stream()
                .filter(standing -> standing != Standing.TAKEN_OUT)
                .count();
    }

    public long open() {
        return standings.stream().filter(Standing::open).count();
    }

    public long over() {
        return vehicles() - open();
    }

    public String path() {
        return Campaign.path(row.number);
    }

    public String hazard() {
        return Words.of("campaign.hazard." + row.hazard.name());
    }

    public String meaning() {
        return row.isClosed ? "quiet" : row.hazard == Hazard.STOP_USE ? "danger" : "warn";
    }

    public String state() {
        return row.isClosed ? Words.of("campaign.stateClosed") : Words.of("campaign.stateOpen", over(), vehicles());
    }

    boolean holds(String text) {
        return (row.number + " " + row.title).toLowerCase(Words.LOCALE).contains(text.toLowerCase(Words.LOCALE));
    }

    List<String> cells() {
        return List.of(
                row.number,
                row.title,
                row.hazard.name(),
                row.isClosed ? "CLOSED" : "OPEN",
                String.valueOf(vehicles()),
                String.valueOf(open()),
                row.openedAt.toString(),
                row.openedBy,
                Objects.toString(row.closedAt, ""));
    }
}
