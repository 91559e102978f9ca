package wainbook.setup;

import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said when a works is set up. */
public sealed interface SetupSaying extends Saying {

    /**
     * The files of a works were taken; what they changed follows in the same moment.
     *
     * @param fingerprint of the changes, as whoever took them had seen them
     * @param changes how many lines were new or changed
     * @param confirmedBy the second person, where the way of building vehicles changed
     */
    @Kind("setup.filesTaken/1")
    record FilesTaken(String fingerprint, int changes, Optional<String> confirmedBy) implements SetupSaying {}

    /**
     * A person got a new password: in the person's own stream, since whoever sets it could sign as them until it is
     * changed.
     *
     * @param bySelf whether the person chose it
     */
    @Kind("setup.passwordSet/1")
    record PasswordSet(boolean bySelf) implements SetupSaying {}
}
