package wainbook.print;

/**
 * A file that a document carries inside (ISO 19005-3:2012, 6.8: an associated file).
 *
 * @param name with its ending, unique in the document
 * @param mediaType {@code application/json}; {@code application/octet-stream} where nobody knows
 * @param description one sentence
 */
@SuppressWarnings("ArrayRecordComponent") // Nobody compares attachments, nor changes what is printed.
public record Attachment(String name, String mediaType, String description, Relationship relationship, byte[] bytes) {

    /** How the file belongs to the document; the constant's name is the key in the file. */
    public enum Relationship {
        /** What the document was made from. */
        Source,
        /** Figures that the document shows. */
        Data,
        /** What goes beyond the document. */
        Supplement
    }

    public Attachment {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*") || !mediaType.matches("[a-z]+/[a-z0-9.+-]+")) {
            throw new IllegalArgumentException("no name or type of a file: " + name + ", " + mediaType);
        }
    }
}
