package wainbook.page;

import java.util.Optional;

/** Something that every page says while it lasts. A higher room has it. */
public interface Announcement {

    /** The text, while there is anything to say. */
    Optional<String> text();

    /** Where somebody must go about it; then it is said as a danger. */
    default Optional<String> path() {
        return Optional.empty();
    }

    /** Whether it is said to somebody who is not signed in. */
    default boolean toStrangers() {
        return true;
    }

    /** What is said, as the layout draws it. */
    record Said(String text, Optional<String> path) {}

    default Optional<Said> said() {
        return text().map(known -> new Said(known, path()));
    }
}
