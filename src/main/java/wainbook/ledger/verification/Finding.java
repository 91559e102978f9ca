package wainbook.ledger.verification;

import java.util.Arrays;
import java.util.List;

/**
 * One place where the stored record is not what was written.
 *
 * @param where the stream, entry or file
 * @param what in which way; said in words by whoever shows it, to a person with the format's page open
 */
public record Finding(String where, What what, List<String> arguments) {

    /** The ways in which a record can be other than it was written. */
    public enum What {
        ID_TWICE,
        TEXT_WITHOUT_ITS_HASH,
        OTHER_NUMBER,
        DOES_NOT_FOLLOW,
        OTHER_SUBJECT,
        EARLIER_THAN_BEFORE,
        UNREADABLE,
        COLUMN_ID,
        COLUMN_STREAM,
        COLUMN_NUMBER,
        COLUMN_KIND,
        KIND_UNKNOWN,
        NO_STREAM,
        END_NUMBER,
        END_HASH,
        END_TIME,
        NO_ENTRIES,
        STREAM_ID,
        SUBJECT_UNREADABLE,
        FILE_FINGERPRINT,
        FILE_SIZE,
        FILE_TYPE_SAID,
        FILE_SIZE_SAID,
        FILE_MISSING
    }

    public Finding {
        arguments = List.copyOf(arguments);
    }

    static Finding of(String where, What what, Object... arguments) {
        return new Finding(
                where, what, Arrays.stream(arguments).map(String::valueOf).toList());
    }
}
