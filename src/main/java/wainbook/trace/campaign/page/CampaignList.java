package wainbook.trace.campaign.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;

/** Campaigns that a reader asked for. */
public record CampaignList(List<CampaignLine> all, String search, String which, boolean mayOpen) {

    private static final String OPEN = "open";
    private static final String CLOSED = "closed";

    public CampaignList {
        all = List.copyOf(all);
    }

    public List<CampaignLine> shown() {
        return all.stream()
                .filter(line -> line.holds(search))
                .filter(line -> which.isEmpty() || line.row().isClosed == which.equals(CLOSED))
                .toList();
    }

    public long open() {
        return all.stream().filter(line -> !line.row().isClosed).count();
    }

    public Form form() {
        return Form.EMPTY.with("search", search).with("which", which);
    }

    public List<Option> options() {
        return List.of(
                new Option(OPEN, Words.of("campaign.whichOpen")), new Option(CLOSED, Words.of("campaign.whichClosed")));
    }

    public String csv() {
        return "/campaigns.csv?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&which="
                + URLEncoder.encode(which, StandardCharsets.UTF_8);
    }
}
