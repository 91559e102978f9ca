package wainbook.setup.files;

import java.util.List;

/**
 * How one line of the files differs from what the works has on record.
 *
 * @param key what the line is known by; empty for the works itself
 * @param fields what differs in it; for a line that only one side has, nothing
 */
public record Change(Part part, String key, Sort sort, List<Field> fields) {

    /** What the difference is, and what taking the files does about it. */
    public enum Sort {
        /** Not on record yet: it will be. */
        ADDED,
        /** On record in other words: it will be said anew. */
        CHANGED,
        /** Only on record: it stays, since a line that is left out removes nothing. */
        STAYS,
        /** The works ended it since: a person who left, a competence withdrawn. The files do not bring it back. */
        ENDED;

        public boolean writes() {
            return this == ADDED || this == CHANGED;
        }
    }

    /**
     * One field.
     *
     * @param path its name, below the names of what it stands in
     * @param was what is on record; empty for nothing
     * @param becomes what the files say; empty for nothing
     */
    public record Field(String path, String was, String becomes) {}

    public Change {
        fields = List.copyOf(fields);
    }

    public boolean touches(String field) {
        return fields.stream().anyMatch(one -> one.path().equals(field));
    }

    public boolean writes() {
        return sort.writes();
    }
}
