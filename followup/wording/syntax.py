"""Which template syntax a text may use: a short allow-list, looked at before anything is compiled or run.

The sandbox alone limits neither time nor memory, and Jinja folds constants while compiling: so a template may hold
names, attributes, conditions, one level of loops and a few filters; no calls, no arithmetic, no assignments.
"""

from __future__ import annotations

from functools import lru_cache

from jinja2 import TemplateSyntaxError, nodes
from jinja2.sandbox import ImmutableSandboxedEnvironment

from followup.core.wording_checks import Fault
from followup.core.wording_facts import ATTRIBUTES, FACTS, names_of

MOST_CHARACTERS = 2000
MOST_NODES = 400
MOST_DEPTH = 25
NODES = (
    nodes.Template, nodes.Output, nodes.TemplateData, nodes.Name, nodes.Getattr, nodes.Const, nodes.If, nodes.For,
    nodes.Filter, nodes.Compare, nodes.Operand, nodes.Not, nodes.And, nodes.Or, nodes.CondExpr,
)  # fmt: skip
FILTERS = ("capitalize", "default", "first", "join", "last", "length", "lower", "title", "trim", "upper")
LOOP_ATTRIBUTES = frozenset({"first", "last", "index"})

# Parses only; nothing is ever compiled or run with it.
_PARSER = ImmutableSandboxedEnvironment()


@lru_cache(maxsize=1024)
def _faults(source: str, reason_code: str) -> tuple[Fault, ...]:
    if len(source) > MOST_CHARACTERS:
        return (_fault(f"The wording is longer than {MOST_CHARACTERS:,} characters. Shorten it."),)
    try:
        tree = _PARSER.parse(source)
    except (TemplateSyntaxError, RecursionError, ValueError, OverflowError) as error:
        line = f" in line {error.lineno}" if isinstance(error, TemplateSyntaxError) else ""
        return (_fault(f"The braces{line} cannot be read: {error}. Check each {{{{ and {{%."),)
    return tuple(dict.fromkeys(_Walk(reason_code).faults_of(tree)))


def check_template(source: str, reason_code: str) -> list[Fault]:
    """What in `source` a template of that reason may not hold; empty where it may be rendered."""
    return list(_faults(source, reason_code))


def _fault(says: str, rule: str = "syntax") -> Fault:
    return Fault(rule, says)


class _Walk:
    """One walk over a syntax tree, without recursion, so that no depth of nesting can break it."""

    def __init__(self, reason_code: str) -> None:
        self.facts = names_of(reason_code)

    def faults_of(self, tree: nodes.Template) -> list[Fault]:
        found: list[Fault] = []
        waiting: list[tuple[nodes.Node, frozenset[str], int]] = [(tree, frozenset(), 0)]
        seen = 0
        while waiting:
            node, loop_names, depth = waiting.pop()
            seen += 1
            if seen > MOST_NODES or depth > MOST_DEPTH:
                return [_fault("The wording is nested too deeply or holds too many braces. Make it simpler.")]
            if not isinstance(node, NODES):
                found.append(_fault(f"“{type(node).__name__.lower()}” is not allowed between braces. Leave it out."))
                continue
            found += self._faults_of_node(node, loop_names)
            inside = loop_names
            if isinstance(node, nodes.For) and isinstance(node.target, nodes.Name):
                inside = loop_names | {node.target.name, "loop"}
            waiting += [(child, inside, depth + 1) for child in node.iter_child_nodes()]
        return found

    def _faults_of_node(self, node: nodes.Node, loop_names: frozenset[str]) -> list[Fault]:
        if isinstance(node, nodes.For):
            return self._faults_of_loop(node, loop_names)
        if isinstance(node, nodes.Name) and node.ctx == "load" and node.name not in {*self.facts, *loop_names}:
            known = ", ".join(self.facts)
            return [_fault(f"“{node.name}” is not known in this text. Known are: {known}.", "unknown name")]
        if isinstance(node, nodes.Getattr):
            return self._faults_of_attribute(node, loop_names)
        if isinstance(node, nodes.Filter):
            return self._faults_of_filter(node)
        if isinstance(node, nodes.Const) and not isinstance(node.value, str | int | None):
            return [_fault("Only words and whole numbers may stand between braces.")]
        return []

    def _faults_of_loop(self, node: nodes.For, loop_names: frozenset[str]) -> list[Fault]:
        if loop_names:
            return [_fault("A loop inside a loop is not allowed.")]
        if node.recursive or node.test is not None or not isinstance(node.target, nodes.Name):
            return [_fault("A loop may only go over a list: {% for item in items %}.")]
        if node.target.name in self.facts or node.target.name == "loop":
            return [_fault(f"“{node.target.name}” is a fact already. Name what the loop goes over differently.")]
        if not isinstance(node.iter, nodes.Name) or node.iter.name not in FACTS:
            return [_fault("A loop may only go over a list among the facts.")]
        if not isinstance(FACTS[node.iter.name].en, list):
            return [_fault(f"“{node.iter.name}” is no list: write {{{{ {node.iter.name} }}}}.")]
        return []

    def _faults_of_attribute(self, node: nodes.Getattr, loop_names: frozenset[str]) -> list[Fault]:
        if not isinstance(node.node, nodes.Name) or node.node.name not in loop_names:
            return [_fault(f"“.{node.attr}” may only follow the name of a loop.")]
        allowed = LOOP_ATTRIBUTES if node.node.name == "loop" else ATTRIBUTES
        if node.attr not in allowed:
            return [_fault(f"“.{node.attr}” is not known. Known are: {', '.join(sorted(allowed))}.", "unknown name")]
        return []

    def _faults_of_filter(self, node: nodes.Filter) -> list[Fault]:
        if node.name not in FILTERS:
            return [_fault(f"The filter “{node.name}” is not allowed. Allowed are: {', '.join(FILTERS)}.")]
        if node.kwargs or node.dyn_args or node.dyn_kwargs or len(node.args) > 1:
            return [_fault(f"The filter “{node.name}” takes one word at most.")]
        if not all(isinstance(arg, nodes.Const) for arg in node.args):
            return [_fault(f"The filter “{node.name}” takes a fixed word only.")]
        # A chain of joins would multiply its length with each link.
        if node.name == "join" and not isinstance(node.node, nodes.Name):
            return [_fault("“join” may only follow the name of a list.")]
        return []
