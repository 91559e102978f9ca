/** What keeps people whole beside the rules of the work: near misses, safety stops, visitors and who is inside. */
package wainbook.safety;
