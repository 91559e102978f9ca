package wainbook.order;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of a work order and its vehicle as a whole. Rooms above append these; this room reads them. */
public sealed interface OrderSaying extends Saying {

    /** Where a vehicle is: a stage of its route and a place; the place is a station, a bay or the yard. */
    record Place(Optional<String> stage, String place) {}

    /** The check sheet, in the revision that was released when the vehicle entered the stage. */
    record Binding(String stage, String sheet, int revision) {}

    /** What a hold stops. */
    enum Stops {
        WORK,
        SIGN,
        MOVE
    }

    /** Why a hold was put on; decides who may release it. */
    enum HoldKind {
        SAFETY,
        QUALITY,
        PARTS,
        OPERATOR_WISH
    }

    /** @param stages of the route, in order, as they were when the order was made */
    @Kind("order.ordered/1")
    record Ordered(
            String operator,
            String vehicleKind,
            String variant,
            String route,
            List<String> stages,
            LocalDate promisedOn)
            implements OrderSaying {
        public Ordered {
            stages = List.copyOf(stages);
        }
    }

    /** A fact of the vehicle that rules ask for, in the type the vocabulary of facts gives it. */
    @Kind("order.factStated/1")
    record FactStated(String fact, String stated) implements OrderSaying {}

    @Kind("order.donorReceived/1")
    record DonorReceived(String vin, String registration, int odometerKm, Place at, Binding binding)
            implements OrderSaying {}

    /** @param fingerprint of the survey's evidence that was judged */
    @Kind("order.donorAccepted/1")
    record DonorAccepted(String fingerprint, Place to) implements OrderSaying {}

    @Kind("order.donorRejected/1")
    record DonorRejected(String fingerprint, String reason) implements OrderSaying {}

    /** @param confirmed what the mover confirmed, by key: people and tools clear, no lock on, steering and brakes */
    @Kind("order.moved/1")
    record Moved(
            Direction direction,
            Place from,
            Place to,
            Optional<Binding> binding,
            List<String> confirmed,
            Optional<String> reason)
            implements OrderSaying {
        public Moved {
            confirmed = List.copyOf(confirmed);
        }
    }

    /** Which way a vehicle moves. */
    enum Direction {
        ONTO_LINE(WorkOrder.Phase.ON_LINE),
        FORWARD(WorkOrder.Phase.ON_LINE),
        OFF_LINE(WorkOrder.Phase.OFF_LINE),
        BACK_ON(WorkOrder.Phase.ON_LINE),
        BACK(WorkOrder.Phase.ON_LINE),
        OUT(WorkOrder.Phase.FINISHED);

        private final WorkOrder.Phase leadsTo;

        Direction(WorkOrder.Phase leadsTo) {
            this.leadsTo = leadsTo;
        }

        public WorkOrder.Phase leadsTo() {
            return leadsTo;
        }
    }

    /** The vehicle's stage goes on by a newer revision of its sheet. */
    @Kind("order.rebound/1")
    record Rebound(Binding from, Binding to, List<String> keptItems) implements OrderSaying {
        public Rebound {
            keptItems = List.copyOf(keptItems);
        }
    }

    @Kind("order.held/1")
    record Held(int hold, HoldKind kindOfHold, List<Stops> stops, String reason) implements OrderSaying {
        public Held {
            stops = List.copyOf(stops);
        }
    }

    @Kind("order.holdReleased/1")
    record HoldReleased(int hold, String reason) implements OrderSaying {}

    /** @param requirements ids of the documents in the set given over */
    @Kind("order.handedOver/1")
    record HandedOver(String receivedBy, List<String> requirements) implements OrderSaying {
        public HandedOver {
            requirements = List.copyOf(requirements);
        }
    }

    /**
     * A vehicle that this works handed over is back under a new order. The record of the former one is carried on here, so
     * what it said up to then is fixed by its fingerprint.
     *
     * @param earlier order under which it was handed over last
     * @param carriesOn number of that record’s last entry
     * @param head hash of that entry
     */
    @Kind("order.returned/1")
    record Returned(String earlier, long carriesOn, String head, String vin, String registration, String reason)
            implements OrderSaying {}

    /** Said on the former record: what is done to the vehicle from now on stands under another order. */
    @Kind("order.returnedUnder/1")
    record ReturnedUnder(String order) implements OrderSaying {}
}
