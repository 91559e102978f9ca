package wainbook.trace.campaign.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Answer;
import wainbook.trace.campaign.CampaignSaying.Answered;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.ReworkOrdered;
import wainbook.trace.campaign.CampaignSaying.Settled;
import wainbook.trace.campaign.CampaignSaying.StaysIn;
import wainbook.trace.campaign.CampaignSaying.TakenOut;
import wainbook.trace.campaign.CampaignSaying.TakingOutAsked;

/**
 * One vehicle of a campaign as its page shows it.
 *
 * @param heard what the campaign's stream says of it, oldest first
 * @param against what stands against each step, for the reader
 * @param routes by which it could come back
 * @param known order under which it is back or awaited already
 */
public record VehicleView(
        Campaign campaign,
        VehicleLine line,
        List<Entry> heard,
        Against against,
        List<Option> routes,
        Optional<String> known,
        Filled filled,
        CampaignView.Doors doors) {

    /** Reasons by step. */
    public record Against(
            List<Reason> answer,
            List<Reason> rework,
            List<Reason> settle,
            List<Reason> askOut,
            List<Reason> agreeOut,
            List<Reason> add) {}

    /** Something that happened. */
    public record Told(Entry entry, String what, String words, Optional<EvidenceFile> file, Optional<String> path) {}

    public VehicleView {
        heard = List.copyOf(heard);
    }

    public List<Told> told() {
        return heard.stream().map(VehicleView::told).toList();
    }

    private static Told told(Entry entry) {
        if (entry.saying() instanceof LetterSent said) {
            return new Told(
                    entry,
                    Words.of(
                            "campaign.toldLetter",
                            said.letter(),
                            Words.of("campaign.way." + said.way().name())),
                    "",
                    Optional.of(said.file()),
                    Optional.empty());
        } else if (entry.saying() instanceof Answered said) {
            return plain(entry, Words.of("campaign.answer." + said.answer().name()), said.words());
        } else if (entry.saying() instanceof ReworkOrdered said) {
            return new Told(
                    entry,
                    Words.of("campaign.toldRework", said.rework()),
                    "",
                    Optional.empty(),
                    Optional.of("/orders/" + said.rework()));
        } else if (entry.saying() instanceof Settled said) {
            return new Told(
                    entry,
                    Words.of("campaign.end." + said.end().name()),
                    said.reason(),
                    said.file(),
                    said.entry().map(number -> "/orders/" + said.order() + "#entry-" + number));
        } else if (entry.saying() instanceof TakingOutAsked said) {
            return plain(entry, Words.of("campaign.toldAskedOut"), said.reason());
        } else if (entry.saying() instanceof StaysIn said) {
            return plain(entry, Words.of("campaign.toldStays"), said.reason());
        } else if (entry.saying() instanceof TakenOut) {
            return plain(entry, Words.of("campaign.toldTakenOut"), "");
        }
        return plain(entry, Words.of("campaign.toldInScope"), "");
    }

    private static Told plain(Entry entry, String what, String words) {
        return new Told(entry, what, words, Optional.empty(), Optional.empty());
    }

    public List<Option> answers() {
        return Arrays.stream(Answer.values())
                .map(one -> new Option(one.name(), Words.of("campaign.answer." + one.name())))
                .toList();
    }

    public List<Option> ends() {
        return Arrays.stream(End.values())
                .map(one -> new Option(one.name(), Words.of("campaign.end." + one.name())))
                .toList();
    }

    public String path() {
        return line.path();
    }

    public boolean askedOut() {
        return line.askedOut();
    }

    public Optional<String> askedOutWhy() {
        return line.one().askedOut().map(entry -> ((TakingOutAsked) entry.saying()).reason());
    }
}
