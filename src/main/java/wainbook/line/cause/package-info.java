/** Why a station is held up, along the chain of those that wait for each other. */
package wainbook.line.cause;
