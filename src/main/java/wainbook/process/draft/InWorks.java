package wainbook.process.draft;

import java.util.List;
import java.util.Optional;
import wainbook.process.sheet.CheckSheet;

/** What this room must know of the vehicles in the works; answered by a room above that knows them. */
public interface InWorks {

    /** Every vehicle that is ordered and neither rejected nor handed over. */
    List<Vehicle> vehicles();

    /**
     * A vehicle as far as a release could break something for it.
     *
     * @param variant whose isolation plan is meant for it
     * @param place where it stands
     * @param sheets those it is bound to, in the revision it is bound to
     * @param aboard sources of voltage that the work brought aboard
     * @param isolated whether an isolation has begun at it and not ended
     */
    record Vehicle(
            String order,
            String variant,
            String route,
            Optional<String> place,
            List<CheckSheet> sheets,
            List<String> aboard,
            boolean isolated) {
        public Vehicle {
            sheets = List.copyOf(sheets);
            aboard = List.copyOf(aboard);
        }
    }
}
