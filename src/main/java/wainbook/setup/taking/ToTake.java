package wainbook.setup.taking;

import java.util.Optional;
import java.util.UUID;
import wainbook.setup.files.WorksFiles;

/**
 * Files that somebody wants taken.
 *
 * @param fingerprint of the changes as they had seen them
 * @param second who confirms it, where a second person is asked for
 */
public record ToTake(UUID id, WorksFiles files, String fingerprint, Optional<Second> second) {

    /** A second person, with their own password. */
    public record Second(String user, String password) {}
}
