package wainbook.trace;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.process.ProcessSaying.JointsReleased;

/**
 * Which revision of the works’ joints an entry was made by. A joint’s entry carries its limits and not that number; but no other
 * revision can have been in force when it was recorded, so the time of the entry tells.
 *
 * @param releases each with when it came into force, the oldest first
 */
public record JointRevisions(List<Release> releases) {

    /** The works’ joints, all of them, as one thing. */
    static final String ALL = "JOINTS";

    private static final Pattern FORM = Pattern.compile("(.+)/(\\d{1,6})");

    /** A revision that came into force. */
    public record Release(int revision, Instant from) {}

    /**
     * Entries on joints that a code means.
     *
     * @param joint the only one meant; absent for all of a revision
     * @param until the next revision; absent while this one is in force
     */
    record Sought(Optional<String> joint, Instant from, Optional<Instant> until) {}

    public JointRevisions {
        releases = List.copyOf(releases);
    }

    public static JointRevisions of(History works) {
        return new JointRevisions(
                works.saying(JointsReleased.class).map(JointRevisions::release).toList());
    }

    private static Release release(Entry entry) {
        return new Release(
                ((JointsReleased) entry.saying()).revision(), entry.moment().at());
    }

    /** The revision in force then; empty before the first. */
    public Optional<Integer> at(Instant when) {
        return releases.stream()
                .filter(release -> !release.from().isAfter(when))
                .reduce((former, latter) -> latter)
                .map(Release::revision);
    }

    /** What an entry on a joint is found by: the joint in its revision, and the revision of all joints. */
    public List<Mention> of(TracedRow row) {
        var mentions = new ArrayList<Mention>();
        at(row.at).ifPresent(revision -> {
            mentions.add(Mention.of(Mention.Sort.JOINT_REVISION, row.shown + "/" + revision));
            mentions.add(Mention.of(Mention.Sort.JOINT_REVISION, ALL + "/" + revision));
        });
        return mentions;
    }

    /** @param code in capitals, without blanks: {@code MOTOR-MOUNT/3} or {@code JOINTS/3} */
    Optional<Sought> sought(String code) {
        Matcher form = FORM.matcher(code);
        if (!form.matches()) {
            return Optional.empty();
        }
        int revision = Integer.parseInt(form.group(2));
        for (int i = 0; i < releases.size(); i++) {
            if (releases.get(i).revision() == revision) {
                return Optional.of(new Sought(
                        Optional.of(form.group(1)).filter(joint -> !joint.equals(ALL)),
                        releases.get(i).from(),
                        i + 1 < releases.size()
                                ? Optional.of(releases.get(i + 1).from())
                                : Optional.empty()));
            }
        }
        return Optional.empty();
    }

    /** The joint that every code with this beginning is of; empty for any. */
    public static String joint(String beginning) {
        String joint = beginning.contains("/") ? beginning.substring(0, beginning.indexOf('/')) : beginning;
        return ALL.startsWith(joint) ? "" : joint;
    }
}
