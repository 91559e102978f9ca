/** Gates: a stage's work examined and signed by somebody who did none of it, or refused with reasons. */
package wainbook.gate;
