package wainbook.ledger;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What somebody asks to have written: a record made by a page or a script. Its id becomes the entry's id, so that asking
 * twice writes once. A component that the entry's body has under the same name is compared when the request comes again.
 */
public interface Asked {

    /** Chosen by the asker, before the first try. */
    UUID id();

    /** The streams that may be written, the one that takes the entry with this id first. */
    List<Subject> writes();

    /** The kind, or family of kinds, that the entry with this id will be. */
    Class<? extends Saying> says();

    /** For acts that judge a whole: the number up to which the asker had seen the first stream. */
    default Optional<Long> seen() {
        return Optional.empty();
    }
}
