package wainbook.line.road;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleaseEnded;
import wainbook.line.LineSaying.RoadReleased;

/** All releases of one vehicle for the road and all its drives, oldest first. */
public record RoadUse(List<Release> releases, List<Drive> drives) {

    /** @param ended what ended it: withdrawn by a person, or a drive that found something */
    public record Release(RoadReleased said, String who, Instant at, long entry, Optional<Entry> ended) {
        public int number() {
            return said.release();
        }

        private Release endedBy(Entry by) {
            return ended.isPresent() ? this : new Release(said, who, at, entry, Optional.of(by));
        }
    }

    public record Drive(RoadDriven said, String who, Instant at, long entry) {}

    public RoadUse {
        releases = List.copyOf(releases);
        drives = List.copyOf(drives);
    }

    public static RoadUse of(History history) {
        var releases = new ArrayList<Release>();
        var drives = new ArrayList<Drive>();
        for (Entry entry : history.entries()) {
            String who = entry.moment().who();
            Instant at = entry.moment().at();
            if (entry.saying() instanceof RoadReleased said) {
                releases.replaceAll(before -> before.endedBy(entry));
                releases.add(new Release(said, who, at, entry.number(), Optional.empty()));
            } else if (entry.saying() instanceof RoadReleaseEnded) {
                releases.replaceAll(before -> before.endedBy(entry));
            } else if (entry.saying() instanceof RoadDriven said) {
                drives.add(new Drive(said, who, at, entry.number()));
                if (!said.fit()) {
                    releases.replaceAll(before -> before.endedBy(entry));
                }
            }
        }
        return new RoadUse(releases, drives);
    }

    /** The release that nobody ended; whether what it rests on was disturbed is for a room above to say. */
    public Optional<Release> inForce() {
        return last().filter(release -> release.ended().isEmpty());
    }

    public Optional<Release> last() {
        return releases.isEmpty() ? Optional.empty() : Optional.of(releases.get(releases.size() - 1));
    }

    public int next() {
        return releases.size() + 1;
    }

    public Optional<Drive> lastDrive() {
        return drives.isEmpty() ? Optional.empty() : Optional.of(drives.get(drives.size() - 1));
    }

    /** Whether it was driven and the last drive found nothing that keeps it off the road. */
    public boolean provedOnTheRoad() {
        return lastDrive().filter(drive -> drive.said().fit()).isPresent();
    }
}
