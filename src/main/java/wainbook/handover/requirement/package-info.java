/** Which documents the law, a contract or good practice asks for, by rules that carry their sources. */
package wainbook.handover.requirement;
