package wainbook.trace.campaign.letter;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.print.Heading;
import wainbook.print.PdfPage;
import wainbook.print.Printer;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Plate;
import wainbook.trace.campaign.Step;
import wainbook.trace.campaign.StepRule;
import wainbook.works.WorksSaying.Named;
import wainbook.works.shift.WorksDay;

/** Writes the letters of a campaign: one to an operator, with every vehicle of theirs that is still open. */
@ApplicationScoped
public class Letters {

    private final Ledger ledger;
    private final Campaigns campaigns;
    private final WorksDay day;

    Letters(Ledger ledger, Campaigns campaigns, WorksDay day) {
        this.ledger = ledger;
        this.campaigns = campaigns;
        this.day = day;
    }

    /** Operators with vehicles that a letter can be about, in the order of the alphabet. */
    public List<String> operators(Campaign campaign) {
        return campaign.vehicles().values().stream()
                .filter(one -> mayBeIn(campaign, one))
                .map(one -> one.scope().operator())
                .distinct()
                .sorted()
                .toList();
    }

    /** The next letter to an operator; empty where none of its vehicles is open and with it. */
    public Optional<Letter> next(Campaign campaign, String operator, Instant at) {
        List<Letter.Line> vehicles = campaign.vehicles().values().stream()
                .filter(one -> one.scope().operator().equals(operator))
                .filter(one -> mayBeIn(campaign, one))
                .map(this::line)
                .toList();
        return vehicles.isEmpty()
                ? Optional.empty()
                : Optional.of(new Letter(
                        campaign,
                        campaign.letters().size() + 1,
                        works(),
                        operator,
                        vehicles,
                        at,
                        Formats.date(day.of(at))));
    }

    private boolean mayBeIn(Campaign campaign, InCampaign one) {
        return StepRule.against(
                        Step.SEND_LETTER,
                        campaign.isOpen(),
                        campaign.number(),
                        one.order(),
                        Optional.of(campaigns.progress(one)),
                        "")
                .isEmpty();
    }

    private Letter.Line line(InCampaign one) {
        return new Letter.Line(
                one.order(),
                campaigns.order(one.order()).flatMap(Plate::of).orElse("–"),
                one.scope().vin().orElse("–"));
    }

    private String works() {
        return ledger.history(Subject.works())
                .last(Named.class)
                .map(Named::title)
                .orElse("–");
    }

    public byte[] pdf(Letter letter) {
        return Printer.pdf(new PdfPage(
                LetterSheets.sheet(letter, true).render(),
                new Heading(letter.title(), letter.campaign().said().title(), Words.LOCALE, letter.at()),
                List.of()));
    }

    /** The same as it is shown on a page. */
    public String shown(Letter letter) {
        return LetterSheets.sheet(letter, false).render();
    }
}
