package wainbook.ledger.bytes;

/** Text that has no single form in bytes: it holds U+0000 or half of a surrogate pair. Asked of a person, it is a 422. */
public final class UnwritableText extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnwritableText(String what) {
        super(what);
    }
}
