package wainbook.trace.campaign;

import jakarta.ws.rs.NotFoundException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.trace.campaign.CampaignSaying.Answered;
import wainbook.trace.campaign.CampaignSaying.Closed;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.LetterWorded;
import wainbook.trace.campaign.CampaignSaying.Opened;
import wainbook.trace.campaign.CampaignSaying.Reopened;
import wainbook.trace.campaign.CampaignSaying.ReworkOrdered;
import wainbook.trace.campaign.CampaignSaying.Settled;
import wainbook.trace.campaign.CampaignSaying.StaysIn;
import wainbook.trace.campaign.CampaignSaying.TakenOut;
import wainbook.trace.campaign.CampaignSaying.TakingOutAsked;
import wainbook.trace.campaign.CampaignSaying.VehiclesAdded;

/**
 * A campaign as its entries leave it.
 *
 * @param vehicles by work order, in the order in which they came into scope
 * @param wording what the letters ask, where the works has put it in its own words
 */
public record Campaign(
        String number,
        Entry opened,
        Map<String, InCampaign> vehicles,
        Optional<String> wording,
        List<Entry> letters,
        Optional<Entry> closed,
        Optional<Entry> reopened) {

    public static final String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,19}";

    public Campaign {
        letters = List.copyOf(letters);
    }

    /** A number that cannot be one is not found, whatever else is wrong. */
    public static Subject subject(String number) {
        return Optional.of(number)
                .filter(text -> text.matches(FORM))
                .map(Subject::campaign)
                .orElseThrow(NotFoundException::new);
    }

    public static String path(String number) {
        return "/campaigns/" + number;
    }

    /** Empty where none was opened under this number. */
    public static Optional<Campaign> of(History history) {
        return history.folded(
                Campaign.class,
                Optional.<Campaign>empty(),
                (known, entry) -> entry.saying() instanceof Opened said
                        ? Optional.of(begun(history.subject().code(), said, entry))
                        : known.map(campaign -> campaign.and(entry)));
    }

    private static Campaign begun(String number, Opened said, Entry entry) {
        return new Campaign(
                number,
                entry,
                with(Map.of(), said.vehicles(), entry),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static Map<String, InCampaign> with(Map<String, InCampaign> known, List<InScope> some, Entry entry) {
        var more = new LinkedHashMap<>(known);
        for (InScope one : some) {
            InCampaign before = known.get(one.order());
            more.put(one.order(), before == null ? InCampaign.begun(one, entry) : before.again(one, entry));
        }
        return more;
    }

    private Campaign and(Entry entry) {
        if (entry.saying() instanceof VehiclesAdded said) {
            return having(with(vehicles, said.vehicles(), entry));
        } else if (entry.saying() instanceof TakingOutAsked said) {
            return changed(List.of(said.order()), one -> one.askedOut(entry));
        } else if (entry.saying() instanceof StaysIn said) {
            return changed(List.of(said.order()), InCampaign::staying);
        } else if (entry.saying() instanceof TakenOut said) {
            return changed(List.of(said.order()), one -> one.takenOut(entry));
        } else if (entry.saying() instanceof Answered said) {
            return changed(List.of(said.order()), one -> one.answered(entry));
        } else if (entry.saying() instanceof ReworkOrdered said) {
            return changed(List.of(said.order()), one -> one.reworkOrdered(entry));
        } else if (entry.saying() instanceof Settled said) {
            return changed(List.of(said.order()), one -> one.settled(entry));
        } else if (entry.saying() instanceof LetterSent said) {
            var more = new ArrayList<>(letters);
            more.add(entry);
            return changed(said.orders(), one -> one.written(entry)).lettered(more);
        } else if (entry.saying() instanceof LetterWorded said) {
            return new Campaign(number, opened, vehicles, Optional.of(said.text()), letters, closed, reopened);
        } else if (entry.saying() instanceof Closed) {
            return new Campaign(number, opened, vehicles, wording, letters, Optional.of(entry), reopened);
        } else if (entry.saying() instanceof Reopened) {
            return new Campaign(number, opened, vehicles, wording, letters, Optional.empty(), Optional.of(entry));
        }
        return this;
    }

    private Campaign having(Map<String, InCampaign> known) {
        return new Campaign(number, opened, known, wording, letters, closed, reopened);
    }

    private Campaign lettered(List<Entry> known) {
        return new Campaign(number, opened, vehicles, wording, known, closed, reopened);
    }

    private Campaign changed(List<String> orders, UnaryOperator<InCampaign> change) {
        var more = new LinkedHashMap<>(vehicles);
        orders.forEach(order -> more.computeIfPresent(order, (key, one) -> change.apply(one)));
        return having(more);
    }

    public Opened said() {
        return (Opened) opened.saying();
    }

    public boolean isOpen() {
        return closed.isEmpty();
    }

    public Optional<InCampaign> vehicle(String order) {
        return Optional.ofNullable(vehicles.get(order));
    }

    public String path() {
        return path(number);
    }
}
