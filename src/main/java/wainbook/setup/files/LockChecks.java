package wainbook.setup.files;

import java.util.List;

/** What must hold within the register of locks, boxes, tags and keys, and between it and the people. */
record LockChecks(List<Located<Lines.LockItem>> locks, Codes people, List<Fault> faults) {

    void run() {
        Codes.of(locks, Lines.LockItem::number, "number", "locks.csv", faults, "lock, box, tag or key");
        for (Located<Lines.LockItem> located : locks) {
            new Form(faults).code(located.value().number(), located.at("number"));
            located.value().owner().ifPresent(owner -> people.require(owner, located.at("owner")));
        }
    }
}
