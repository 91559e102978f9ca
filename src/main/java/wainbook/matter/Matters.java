package wainbook.matter;

import java.time.Instant;
import java.util.List;

/**
 * Says what is open of its own sort over all vehicles. Each room says its own matters, in its own words; the list asks them
 * all and knows none of them.
 */
public interface Matters {
    List<OpenMatter> open(Instant now);
}
