package wainbook.trace.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.ReworkOrdered;
import wainbook.trace.campaign.CampaignSaying.Settled;

/**
 * One vehicle of a campaign, as the campaign's own entries leave it.
 *
 * @param said the entry that brought it into scope last
 * @param letters sent to its operator about it, oldest first
 */
public record InCampaign(
        InScope scope,
        Entry said,
        Optional<Entry> askedOut,
        Optional<Entry> takenOut,
        List<Entry> letters,
        List<Entry> answers,
        Optional<Entry> rework,
        Optional<Entry> settled) {

    public InCampaign {
        letters = List.copyOf(letters);
        answers = List.copyOf(answers);
    }

    static InCampaign begun(InScope scope, Entry said) {
        return new InCampaign(
                scope,
                said,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    public String order() {
        return scope.order();
    }

    public Optional<String> reworkOrder() {
        return rework.map(entry -> ((ReworkOrdered) entry.saying()).rework());
    }

    public Optional<Settled> end() {
        return settled.map(entry -> (Settled) entry.saying());
    }

    /** What stands in other streams comes in. */
    public Progress progress(boolean handedOver, Rework now) {
        return new Progress(
                handedOver,
                takenOut.isPresent(),
                takenOut.isPresent()
                        ? Optional.empty()
                        : askedOut.map(entry -> entry.moment().who()),
                !letters.isEmpty(),
                !answers.isEmpty(),
                now,
                settled.isPresent());
    }

    /** Back into scope: what was sent, answered and ordered stays known. */
    InCampaign again(InScope anew, Entry entry) {
        return new InCampaign(
                anew, entry, Optional.empty(), Optional.empty(), letters, answers, rework, Optional.empty());
    }

    InCampaign askedOut(Entry entry) {
        return new InCampaign(scope, said, Optional.of(entry), takenOut, letters, answers, rework, settled);
    }

    InCampaign staying() {
        return new InCampaign(scope, said, Optional.empty(), takenOut, letters, answers, rework, settled);
    }

    InCampaign takenOut(Entry entry) {
        return new InCampaign(scope, said, askedOut, Optional.of(entry), letters, answers, rework, settled);
    }

    InCampaign written(Entry entry) {
        return new InCampaign(scope, said, askedOut, takenOut, and(letters, entry), answers, rework, settled);
    }

    InCampaign answered(Entry entry) {
        return new InCampaign(scope, said, askedOut, takenOut, letters, and(answers, entry), rework, settled);
    }

    InCampaign reworkOrdered(Entry entry) {
        return new InCampaign(scope, said, askedOut, takenOut, letters, answers, Optional.of(entry), settled);
    }

    InCampaign settled(Entry entry) {
        return new InCampaign(scope, said, askedOut, takenOut, letters, answers, rework, Optional.of(entry));
    }

    private static List<Entry> and(List<Entry> some, Entry next) {
        var more = new ArrayList<>(some);
        more.add(next);
        return more;
    }
}
