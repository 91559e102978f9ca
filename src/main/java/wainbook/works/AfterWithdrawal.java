package wainbook.works;

import wainbook.act.Actor;
import wainbook.ledger.Entry;

/**
 * Is told that an instrument is in doubt, after the entry that says so was committed: a calibration that found it unfit, or
 * a withdrawal for any cause but {@link WorksSaying.WithdrawalCause#OTHER}. May be told twice of the same entry, since an act
 * may be asked for again; never throws, since what made the works safer is on record already.
 */
public interface AfterWithdrawal {
    void inDoubt(String instrument, Entry entry, Actor actor);
}
