package wainbook.page;

import java.util.Optional;

/** Something that every page says while it lasts. A higher room has it. */
public interface Announcement {

    /** The text, while there is anything to say. */
    Optional<String> text();
}
