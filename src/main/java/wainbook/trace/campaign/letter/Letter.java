package wainbook.trace.campaign.letter;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Hazard;

/**
 * A letter to one operator about its vehicles. It names no person.
 *
 * @param number of the letter within the campaign
 * @param works the works' title
 * @param day of its writing, by the works' calendar
 */
public record Letter(
        Campaign campaign, int number, String works, String operator, List<Line> vehicles, Instant at, String day) {

    /** A vehicle as its operator knows it. */
    public record Line(String order, String registration, String vin) {}

    public Letter {
        vehicles = List.copyOf(vehicles);
    }

    public String reference() {
        return campaign.number() + "/" + number;
    }

    public String title() {
        return Words.of("campaign.letterTitle", reference(), campaign.said().title());
    }

    public boolean grave() {
        return campaign.said().hazard() == Hazard.STOP_USE;
    }

    public String hazard() {
        return Words.of("campaign.hazardAsks." + campaign.said().hazard().name());
    }

    /** What is asked, paragraph by paragraph: in the works' words, or in the program's where it has none. */
    public List<String> asks() {
        return paragraphs(campaign.wording().orElseGet(Letter::brought));
    }

    public static String brought() {
        return String.join(
                "\n\n",
                Words.of("campaign.letterTell"),
                Words.of("campaign.letterDriver"),
                Words.of("campaign.letterSold"));
    }

    public List<String> wrong() {
        return paragraphs(campaign.said().wrong());
    }

    public List<String> remedy() {
        return paragraphs(campaign.said().remedy());
    }

    private static List<String> paragraphs(String text) {
        return Arrays.stream(text.strip().split("\\s*\\n\\s*\\n\\s*"))
                .filter(paragraph -> !paragraph.isBlank())
                .toList();
    }
}
