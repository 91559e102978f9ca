package wainbook.page.ledger;

/** The roles that may read the record as it is stored. The words are those of the works' roles, a floor above. */
final class Checkers {
    static final String AUDITOR = "auditor";
    static final String QUALITY_ENGINEER = "quality-engineer";
    static final String ADMINISTRATOR = "administrator";

    private Checkers() {}
}
