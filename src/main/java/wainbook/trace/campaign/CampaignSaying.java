package wainbook.trace.campaign;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.StationSaying.Held;
import wainbook.trace.Mention;

/** What is said of a campaign, in a stream of its own. */
public sealed interface CampaignSaying extends Saying {

    /** How urgent it is for whoever runs the vehicle. Common practice, no source: what the law asks is the manufacturer's to find out. */
    enum Hazard {
        STOP_USE,
        BEFORE_NEXT_CHARGE,
        AT_NEXT_SERVICE;

        /**
         * What is stopped of a vehicle in the works. Work goes on, since putting it right is work. The gate waits always, so that
         * no vehicle is handed over with it; where a vehicle must not be used, it stays where it stands too.
         */
        public List<Stops> stops() {
            return switch (this) {
                case STOP_USE -> List.of(Stops.SIGN, Stops.MOVE);
                case BEFORE_NEXT_CHARGE, AT_NEXT_SERVICE -> List.of(Stops.SIGN);
            };
        }
    }

    /** How many of the terms must fit. */
    enum Match {
        ANY,
        ALL
    }

    /**
     * One thing to look for on record.
     *
     * @param code as typed; ending in * for whatever begins so
     * @param to the last of a range that begins with {@code code}
     * @param from the first day on which it was said, by the works' calendar
     * @param until the last day
     */
    record Term(
            Mention.Sort sort, String code, Optional<String> to, Optional<LocalDate> from, Optional<LocalDate> until) {}

    /** What brings a vehicle into scope. */
    record Query(Match match, List<Term> terms) {
        public Query {
            terms = List.copyOf(terms);
        }
    }

    /**
     * A place on record that brought a vehicle into scope.
     *
     * @param stream the stream of the entry, mostly the vehicle's own
     */
    record Because(Mention.Sort sort, String shown, String stream, long entry) {}

    /**
     * A vehicle as it stood when it came into scope.
     *
     * @param withOperator whether its operator had it
     * @param head number of the last entry of its record, with that entry's {@code hash}
     */
    record InScope(
            String order,
            Optional<String> vin,
            String operator,
            Phase phase,
            boolean withOperator,
            List<Because> because,
            long head,
            String hash) {
        public InScope {
            because = List.copyOf(because);
        }
    }

    /**
     * @param wrong what is wrong
     * @param remedy what will be done about it
     */
    @Kind("campaign.opened/1")
    record Opened(String title, String wrong, String remedy, Hazard hazard, Query query, List<InScope> vehicles)
            implements CampaignSaying {
        public Opened {
            vehicles = List.copyOf(vehicles);
        }
    }

    /** Vehicles come into scope later, or come back into it. */
    @Kind("campaign.vehiclesAdded/1")
    record VehiclesAdded(List<InScope> vehicles, String reason) implements CampaignSaying {
        public VehiclesAdded {
            vehicles = List.copyOf(vehicles);
        }
    }

    @Kind("campaign.takingOutAsked/1")
    record TakingOutAsked(String order, String reason) implements CampaignSaying {}

    /** A second person agrees. */
    @Kind("campaign.takenOut/1")
    record TakenOut(String order) implements CampaignSaying {}

    /** It stays in scope after all. */
    @Kind("campaign.staysIn/1")
    record StaysIn(String order, String reason) implements CampaignSaying {}

    /** What the letters ask of an operator, in the works' own words. */
    @Kind("campaign.letterWorded/1")
    record LetterWorded(String text) implements CampaignSaying {}

    /** How a letter went. */
    enum Way {
        POST,
        E_MAIL,
        BY_HAND
    }

    /**
     * @param letter its number within the campaign, from 1
     * @param file as it was sent
     */
    @Kind("campaign.letterSent/1")
    record LetterSent(int letter, String operator, List<String> orders, EvidenceFile file, LocalDate on, Way way)
            implements CampaignSaying {
        public LetterSent {
            orders = List.copyOf(orders);
        }
    }

    /** What came back. */
    enum Answer {
        REACHED,
        SOLD_ON,
        SCRAPPED,
        UNREACHABLE
    }

    @Kind("campaign.answered/1")
    record Answered(String order, Answer answer, LocalDate on, String words) implements CampaignSaying {}

    /** @param rework number of the order by which the vehicle comes back */
    @Kind("campaign.reworkOrdered/1")
    record ReworkOrdered(String order, String rework) implements CampaignSaying {}

    /** How it ended for a vehicle that is not put right by a rework order. */
    enum End {
        PUT_RIGHT_HERE,
        PUT_RIGHT_BY_OPERATOR,
        SCRAPPED,
        OUT_OF_REACH,
        NOT_NEEDED
    }

    /**
     * @param entry of the vehicle's record that shows it
     * @param file that shows it
     */
    @Kind("campaign.settled/1")
    record Settled(String order, End end, String reason, Optional<Long> entry, Optional<EvidenceFile> file)
            implements CampaignSaying {}

    /** A vehicle as it stood when the campaign was closed. */
    record Ended(String order, Standing standing) {}

    @Kind("campaign.closed/1")
    record Closed(String result, List<Ended> vehicles, Held held) implements CampaignSaying {
        public Closed {
            vehicles = List.copyOf(vehicles);
        }
    }

    @Kind("campaign.reopened/1")
    record Reopened(String reason) implements CampaignSaying {}
}
