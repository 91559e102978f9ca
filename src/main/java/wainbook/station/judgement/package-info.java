/** Verdicts on what was answered: pure rules, one for each way of asking. */
package wainbook.station.judgement;
