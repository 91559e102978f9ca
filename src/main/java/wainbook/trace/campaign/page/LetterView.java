package wainbook.trace.campaign.page;

import io.quarkus.qute.RawString;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.trace.campaign.CampaignSaying.Way;
import wainbook.trace.campaign.letter.Letter;

/** A letter before it is sent. */
public record LetterView(Letter letter, String html, long seen, Filled filled, boolean writes) {

    public List<Option> ways() {
        return Arrays.stream(Way.values())
                .map(way -> new Option(way.name(), Words.of("campaign.way." + way.name())))
                .toList();
    }

    public String path() {
        return letter.campaign().path() + "/letter";
    }

    public String pdf() {
        return path() + "/letter.pdf?operator=" + URLEncoder.encode(letter.operator(), StandardCharsets.UTF_8);
    }

    /** The letter as it is shown; it was escaped where it was written. */
    public RawString shown() {
        return new RawString(html);
    }
}
