package wainbook.trace.campaign.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.order.OrderList;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Closed;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.Reopened;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Standing;

/**
 * A campaign as its page shows it.
 *
 * @param seen the number of its stream
 * @param all its vehicles
 * @param since vehicles that match its query now and are not in it
 * @param unheld vehicles in the works that should be held and are not
 * @param operators to whom a letter can go
 * @param against what stands against closing it
 * @param search what the list of vehicles is filtered by, with {@code standing}
 */
public record CampaignView(
        Campaign campaign,
        long seen,
        List<VehicleLine> all,
        List<InScope> since,
        List<InCampaign> unheld,
        List<String> operators,
        List<Reason> against,
        String search,
        String standing,
        int page,
        Filled filled,
        Doors doors) {

    private static final int LEAF = 50;

    /** What the reader's roles allow. */
    public record Doors(boolean leads, boolean writes, boolean closes) {}

    /** A standing with how many vehicles are at it. */
    public record Count(Standing standing, long vehicles) {}

    /** A letter that was sent. */
    public record Sent(LetterSent said, Entry entry) {
        public String way() {
            return Words.of("campaign.way." + said.way().name());
        }

        public String on() {
            return Formats.date(said.on());
        }
    }

    public CampaignView {
        all = List.copyOf(all);
    }

    public String number() {
        return campaign.number();
    }

    public String path() {
        return campaign.path();
    }

    public List<Count> counts() {
        return Arrays.stream(Standing.values())
                .map(one -> new Count(
                        one, all.stream().filter(line -> line.standing() == one).count()))
                .filter(count -> count.vehicles() > 0)
                .toList();
    }

    public long vehicles() {
        return all.stream()
                .filter(line -> line.standing() != Standing.TAKEN_OUT)
                .count();
    }

    public long open() {
        return all.stream().filter(line -> line.standing().open()).count();
    }

    /** In whole percent, rounded down: only a hundred is all of them. */
    public long share() {
        return vehicles() == 0 ? 100 : (vehicles() - open()) * 100 / vehicles();
    }

    public String state() {
        return campaign.isOpen()
                ? Words.of("campaign.stateOpen", vehicles() - open(), vehicles())
                : Words.of("campaign.stateClosed");
    }

    public String hazard() {
        return Words.of("campaign.hazard." + campaign.said().hazard().name());
    }

    public boolean grave() {
        return campaign.said().hazard() == Hazard.STOP_USE;
    }

    public String hazardText() {
        return Words.of("campaign.hazardAsks." + campaign.said().hazard().name());
    }

    public List<String> terms() {
        return QueryWords.terms(campaign.said().query());
    }

    public String match() {
        return Words.of("campaign.match." + campaign.said().query().match().name());
    }

    public boolean severalTerms() {
        return campaign.said().query().terms().size() > 1;
    }

    private List<VehicleLine> fitting() {
        return all.stream()
                .filter(line -> line.holds(search))
                .filter(line -> standing.isEmpty() || line.standing().name().equals(standing))
                .toList();
    }

    public List<VehicleLine> shown() {
        return fitting().stream().skip((page - 1L) * LEAF).limit(LEAF).toList();
    }

    public Leaf leaf() {
        return new Leaf(
                page,
                LEAF,
                fitting().size(),
                path() + "?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&standing=" + standing);
    }

    public Form form() {
        return Form.EMPTY.with("search", search).with("standing", standing);
    }

    public List<Option> standings() {
        return Arrays.stream(Standing.values())
                .map(one -> new Option(one.name(), one.word()))
                .toList();
    }

    public List<Sent> letters() {
        return campaign.letters().stream()
                .map(entry -> new Sent((LetterSent) entry.saying(), entry))
                .toList();
    }

    public long asking() {
        return all.stream().filter(VehicleLine::askedOut).count();
    }

    public String letterPath(String operator) {
        return path() + "/letter?operator=" + URLEncoder.encode(operator, StandardCharsets.UTF_8);
    }

    /** Letters that went to an operator so far. */
    public long sentTo(String operator) {
        return letters().stream()
                .filter(sent -> sent.said().operator().equals(operator))
                .count();
    }

    public Optional<Closed> closed() {
        return campaign.closed().map(entry -> (Closed) entry.saying());
    }

    public Optional<Reopened> reopened() {
        return campaign.reopened().map(entry -> (Reopened) entry.saying());
    }

    public String phase(InScope vehicle) {
        return OrderList.word(vehicle.phase());
    }
}
